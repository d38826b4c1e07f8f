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
      `  coach: ${times(c.digests, 'digest card')}, ${times(c.proposals, 'proposal')} between them; client told of ${times(c.decisions, 'change')} of the plan`,
      c.flags.length > 0 ? `  open at the end: ${c.flags.join(', ')}` : '',
    ]
      .filter((line) => line !== '')
      .join('\n'),
  where: (folder: string, pictures: number, seconds: number): string =>
    `\nPlayed in ${Math.round(seconds)} s. To read and look at:\n  ${folder}/transcript.txt   everything that was said, by day\n  ${folder}/pictures         ${times(pictures, 'digest picture')}\n  ${folder}/messages.jsonl   the same, for programs`,
  page: {
    link: (url: string): string =>
      `\nLive in it yourself (this machine alone, until you press Ctrl+C):\n  ${url}\n`,
    pressed: (label: string): string => `presses “${label}”`,
    chose: (labels: string): string => `chooses ${labels}`,
    filled: (title: string): string => `fills in “${title}”`,
    notAsked: 'This is no act of the page: reload it.',
    unknownWho: 'There is nobody of that name: add the client first.',
    taken: 'That alias is there already, or is no alias: letters, digits and hyphens, at most 30.',
    gone: 'That message is not there any more: look at the latest ones.',
    formGone: 'That form is closed: press its button again.',
    cannot: 'The chat would not let anybody do this here: use what the latest message offers.',
    notSent: (why: string): string => `That was not sent: ${why}.`,
    reported: (what: string): string => `The bot reports: ${what}`,
    nothingDue: 'Nothing more is due: do something, or let a day pass.',
    past: 'That day has passed: start again to come back to it.',
    noClocks: 'The clocks of this time zone do not change within the next year.',
    noClient: 'There is nothing to save yet: add a client first.',
    noScenario: 'There is no scenario of that name: choose one of the list.',
    speed: 'Give a speed of 60 to 604800 seconds a second.',
    hours: 'Give 1 to 12 hours, with a minus to go back.',
    isOn: 'That is so already.',
    busy: 'The rehearsal could not do this; what went before stands. Try again, or start again.',
  },
}
