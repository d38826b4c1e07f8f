export type { Deed } from './log.ts'
export { type Played, PlayRefused } from './play.ts'
export { type PlayResult, playScenario } from './scenario.ts'
export type { Delivered, Shown } from './transcript.ts'
