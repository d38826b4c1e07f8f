import type { ClientFile } from '../ports.ts'
import type { ClientRow, PracticeRow } from '../rows.ts'

/** The file of a client of whom nothing is kept yet. */
export const emptyFile = (practice: PracticeRow, client: ClientRow): ClientFile => ({
  practice,
  client,
  consent: null,
  screening: null,
  plan: null,
  rungs: [],
  checkIns: [],
  signs: [],
  holds: [],
  flags: [],
  decisions: [],
  alerts: [],
  asked: [],
  dues: [],
  activities: [],
  questions: [],
  covers: [],
})
