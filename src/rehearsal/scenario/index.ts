export type { DayValues } from './form-values.ts'
export { loadScenario } from './load.ts'
export { ScenarioProblems } from './problem.ts'
export type {
  ChatFault,
  ClientAct,
  CoachPress,
  DatabaseFault,
  EndExpectation,
  Fault,
  MessageExpectation,
  Script,
  ScriptClient,
  SlashCommand,
  Step,
  Use,
} from './script.ts'
