import type { FhirLabels } from '../../domain/export/fhir/codes.ts'
import { harmless } from '../harmless.ts'
import { date } from './dates.ts'
import { nameOfDrill } from './drills.ts'
import { screening } from './enrol.ts'
import { ladderName } from './names.ts'
import { REACH } from './reach.ts'
import { SIGN_WORDS } from './signs.ts'

/** Names in a FHIR document. */
const fhir: FhirLabels = {
  language: 'en',
  pain: 'Worst pain since the last check-in, back or leg, 0 to 10',
  reach: 'The farthest point from the spine where symptoms are felt, since the last check-in',
  sessions: 'Sessions done that day',
  planned: 'Sessions planned that day',
  rank: 'Rank of the zone: 0 none, 1 back, 2 buttock, 3 thigh, 4 knee, 5 calf, 6 foot',
  activity: 'An activity that matters: how hard it is, 0 easy to 10',
  signs: 'Warning signs',
  screening: 'Questions before the plan',
  plan: 'Plan of the coach',
  zone: (reach) => REACH[reach as keyof typeof REACH] ?? reach,
  sign: (id) => SIGN_WORDS[id as keyof typeof SIGN_WORDS]?.label ?? id,
  question: (id) => screening.question[id] ?? id,
  drill: (ladder, rung) => nameOfDrill(`${ladder}:${rung}`) ?? `${ladderName(ladder)} ${rung}`,
  timesADay: (sessions) => (sessions === 1 ? 'once a day' : `${sessions} times a day`),
}

const KEEP = 'It is health data: keep it where only you can open it. Your coach’s own notes are not in it.'

// the latest days matter; a message holds about so many lines
const MOST_NAMED = 20

/** What a client reads about their own data. */
export const ownData = {
  fhir,
  button: 'Get my data',
  /** In words, and nothing else said. */
  asked: [
    'my data',
    'my record',
    'export',
    'export my data',
    'show my data',
    'show my record',
    'show me my data',
    'show me my record',
    'send me my data',
    'get my data',
    'all my data',
  ] as readonly string[],
  onItsWay: 'I have sent you the file in private.',
  sent: {
    json: `Here is all that is kept of you, as one file (JSON). ${KEEP}`,
    csv: `Here are your days as a table (CSV); it opens in a spreadsheet. ${KEEP}`,
    fhir: `Here is your course as a clinic’s computer can read it (FHIR R4). ${KEEP}`,
  },
  how: 'To change a day, write it again: the later one counts. To get it all as a file: /my-data. To stop: “take a break” or “leave”. To have it erased: /erase-me.',
}

/** The same for the coach. */
export const ownDataForCoach = {
  done: 'Posted to the coach channel.',
  posted: (ref: string, words: boolean): string =>
    `Everything kept of **${harmless(ref)}**, as a file${words ? '' : ' (without the client’s own words, as you have set it)'}. Once saved elsewhere it is out of this private place and out of my reach: I cannot erase it there. Hand it on only where ${harmless(ref)} agrees. Your notes are not in it.`,
  importedSigns: (
    ref: string,
    days: readonly { readonly day: string; readonly names: readonly string[] }[],
  ): string =>
    [
      `A past diary of **${harmless(ref)}** was taken in. It names warning signs, for which no alert was raised. Please ask whether they are still there or have been looked at:`,
      ...days.slice(-MOST_NAMED).map(({ day, names }) => `${date(day)}: ${names.join(', ')}`),
      ...(days.length > MOST_NAMED ? [`and ${days.length - MOST_NAMED} earlier days`] : []),
    ].join('\n'),
}
