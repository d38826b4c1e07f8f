import { DIRECTION } from './digest.ts'
import { words } from './words.ts'

const times = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`

interface ClientSummary {
  readonly ref: string
  readonly prompts: number
  readonly answered: number
  readonly urgent: number
  readonly alerts: number
  readonly proposals: number
  readonly decisions: number
  readonly digests: number
  readonly status: string
  readonly direction: keyof typeof DIRECTION | null
  readonly flags: readonly string[]
}

/** What the rehearsal says of what it played. */
export const rehearsal = {
  begins: (title: string, clients: number, weeks: number): string =>
    `Rehearsal, no account and no token needed: “${title}”\n${times(clients, 'client')}, ${times(weeks, 'week')}, through the real bot, the real chat client and a local stand-in of the chat platform.\n`,
  client: (c: ClientSummary): string =>
    [
      `${c.ref}: ${words.status(c.status)}`,
      `  prompted ${times(c.prompts, 'time')}, ${times(c.answered, 'day')} on record${c.direction ? `; reach ${DIRECTION[c.direction]}` : ''}`,
      c.urgent > 0
        ? `  ${times(c.urgent, 'urgent sign')}: told at once to stop and seek care, coach alerted ${times(c.alerts, 'time')}`
        : '',
      `  coach: ${times(c.proposals, 'proposal')}, ${times(c.digests, 'digest card')}; client told of ${times(c.decisions, 'change')} of the plan`,
      c.flags.length > 0 ? `  open at the end: ${c.flags.join(', ')}` : '',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  where: (folder: string, pictures: number, seconds: number): string =>
    `\nPlayed in ${Math.round(seconds)} s. To read and look at:\n  ${folder}/transcript.txt   everything that was said, by day\n  ${folder}/pictures         ${times(pictures, 'digest picture')}\n  ${folder}/messages.jsonl   the same, for programs`,
}
