import type { Ladder } from '../src/domain/ladder/ladders.ts'
import type { ChatCommand } from '../src/engine/command.ts'
import { answer } from './answer.ts'
import { checkIn } from './check-in.ts'
import { clear } from './clear.ts'
import { clientRecord } from './client-record.ts'
import { cover } from './cover.ts'
import { decide } from './decide.ts'
import { digest } from './digest.ts'
import { discharge } from './discharge.ts'
import { enrol } from './enrol.ts'
import { eraseClient } from './erase-client.ts'
import { eraseMe } from './erase-me.ts'
import { exportClient } from './export-client.ts'
import { handOver } from './hand-over.ts'
import { help } from './help.ts'
import { leave } from './leave.ts'
import { moveClient } from './move-client.ts'
import { myData } from './my-data.ts'
import { myRecord } from './my-record.ts'
import { myTimes } from './my-times.ts'
import { note } from './note.ts'
import { noted } from './noted.ts'
import { pause } from './pause.ts'
import { pauseClient } from './pause-client.ts'
import { plan } from './plan.ts'
import { planHistory } from './plan-history.ts'
import { proposals } from './proposals.ts'
import { questions } from './questions.ts'
import { release } from './release.ts'
import { report } from './report.ts'
import { resume } from './resume.ts'
import { resumeClient } from './resume-client.ts'
import { roster } from './roster.ts'
import { setUp } from './set-up.ts'
import { spokenWith } from './spoken-with.ts'
import { takeUp } from './take-up.ts'
import { today } from './today.ts'
import { why } from './why.ts'

/** Every command that the bot offers in the chat. */
export const commands: readonly ChatCommand[] = [
  answer,
  checkIn,
  clear,
  clientRecord,
  cover,
  decide,
  digest,
  discharge,
  enrol,
  eraseClient,
  eraseMe,
  exportClient,
  handOver,
  help,
  leave,
  moveClient,
  myData,
  myRecord,
  myTimes,
  note,
  noted,
  pause,
  pauseClient,
  plan,
  planHistory,
  proposals,
  questions,
  release,
  report,
  resume,
  resumeClient,
  roster,
  setUp,
  spokenWith,
  takeUp,
  today,
  why,
]

/** The same commands, offering the ladders of a practice wherever one is to be chosen. */
export function commandsWith(ladders: readonly Ladder[]): readonly ChatCommand[] {
  const choices = ladders.map(({ id }) => id)
  return commands.map((command) => ({
    ...command,
    options: command.options.map((option) => (option.name === 'ladder' ? { ...option, choices } : option)),
  }))
}
