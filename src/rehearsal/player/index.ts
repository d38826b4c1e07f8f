export type { Deed } from './log.ts'
export { type PlayResult, playScenario } from './scenario.ts'
export type { Delivered } from './transcript.ts'
