import { plain } from '../src/engine/answer.ts'
import { digestDue } from '../src/engine/coach/digest.ts'
import { newPractice, readPractice } from '../src/engine/coach/practice-settings.ts'
import { placeOf, practiceState } from '../src/engine/coach/practice-state.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import type { Command } from '../src/engine/event.ts'
import type { Texts } from '../src/text/index.ts'

const CHANNELS = ['coach-channel', 'alert-channel'] as const

/**
 * Sets the practice up, or changes one setting of it; a channel that everyone can read is refused. Without options
 * it changes nothing. The answer shows every setting and what is still missing.
 */
export const setUp: PracticeCommand = {
  name: 'set-up',
  who: 'keeper',
  options: [
    { name: 'name', kind: 'text', required: false },
    { name: 'coach-role', kind: 'role', required: false },
    { name: 'coach-channel', kind: 'channel', required: false },
    { name: 'alert-channel', kind: 'channel', required: false },
    { name: 'deputy', kind: 'person', required: false },
    { name: 'zone', kind: 'text', required: false },
    { name: 'digest', kind: 'text', required: false },
    { name: 'region', kind: 'text', required: false },
    { name: 'regions', kind: 'text', required: false },
    { name: 'retention', kind: 'number', required: false, least: 30, most: 3650 },
    { name: 'language', kind: 'text', required: false },
    { name: 'window', kind: 'number', required: false, least: 0, most: 60 },
    { name: 'quote', kind: 'yes-no', required: false },
    { name: 'policy-settled', kind: 'yes-no', required: false },
  ],
  async run({ tx, practice, now, texts, textsFor }, command) {
    const { options, actor, server = null } = command
    const problem = optionProblem(command, texts)
    if (problem) return plain(problem, null)
    const language = options.language === undefined ? null : String(options.language).trim().toLowerCase()
    if (language !== null && textsFor(language).language !== language)
      return plain(texts.courseForCoach.badLanguage(language), null)
    const before = practice ?? newPractice(actor.guild!, now)
    const wished = readPractice(options, before, texts, now)
    if (typeof wished === 'string') return plain(wished, null)
    if (Object.keys(options).length > 0)
      await tx.apply({
        changes: [
          { put: 'practice', row: wished },
          { put: 'due', row: digestDue(wished, now) },
        ],
        postings: [],
      })
    return plain(practiceState(wished, server, textsFor(wished.language)), null)
  },
}

/** A channel that cannot serve, or everyone in place of the coaches: refused, and nothing is changed. */
function optionProblem({ options, server, actor }: Command, { setUp }: Texts): string | null {
  // everyone's role has the server's own id
  if (options['coach-role'] !== undefined && options['coach-role'] === actor.guild)
    return `${setUp.everyoneNoCoach} ${setUp.unchanged}`
  if (!server) return null
  for (const option of CHANNELS) {
    const problem =
      options[option] === undefined ? null : placeOf(option, String(options[option]), server, setUp)
    if (problem) return `${problem} ${setUp.unchanged}`
  }
  return null
}
