import { addDays, type Day, earlierOf } from '../../domain/day.ts'
import { weeksOf } from '../../domain/digest/weeks.ts'
import { ladderOf, lastRung } from '../../domain/ladder/ladders.ts'
import { dayAt } from '../../domain/local-time.ts'
import type { Event, ReportFacts, SignRow, ToldAtStart } from '../../domain/report/facts.ts'
import { type Course, reportFacts } from '../../domain/report/report.ts'
import { assess } from '../../domain/rules/assess.ts'
import { plain } from '../answer.ts'
import type { Draft } from '../draft.ts'
import { historyOf, knownSigns, lastAnswered, liftWanted } from '../history.ts'
import type { Answer, Button } from '../message.ts'
import { goneLadders, restingOn, rungsOn } from '../plan/rungs.ts'
import type { ClientFile, Tx } from '../ports.ts'
import type { HoldRow } from '../rows.ts'
import { statusOf } from '../status.ts'
import { logOf } from './week-facts.ts'

/** More weeks than these are not told apart in a picture half a page wide. */
const PICTURE_WEEKS = 14

/** So long after the last reply the report ends: a longer silence would push the course off the page. */
const SILENCE_DAYS = 28

/** What the report is drawn from at delivery. */
export interface DrawnReport {
  readonly language: string
  readonly facts: ReportFacts
}

/** The button that makes the report, for a coach who refers somebody. */
export const reportButton = ({ forCoach }: Draft): Button => ({
  name: 'report',
  label: forCoach.report.button,
  act: { do: 'report' },
})

/** Posts the one-page report to the coach's channel, as picture and as PDF. */
export async function postReport(tx: Tx, draft: Draft, privately = false): Promise<Answer> {
  const { report, commands, language } = draft.forCoach
  const { ref } = draft.client
  const { practice } = draft.file
  if (!practice.coachChannel) return plain(commands.notSetUpChannel, ref, privately)
  const whole = (await tx.wholeClient(draft.client.id)) ?? draft.file
  const facts = reportOf(draft, whole, { words: practice.quote })
  const drawn: DrawnReport = { language, facts }
  const name = `report-${ref}-${facts.made}`
  draft.toCoach({
    kind: 'report',
    text: report.message(ref),
    picture: { name, alt: report.alt(facts), draw: 'report', facts: drawn },
    files: [{ name: `${name}.pdf`, draw: 'report', facts: drawn }],
  })
  return plain(report.posted, ref, privately)
}

/**
 * The facts of the report over a client's whole course, up to today or to the end of the way.
 * @param words false: the client's own words of a sign are left out
 */
export function reportOf(draft: Draft, whole: ClientFile, { words }: { words: boolean }): ReportFacts {
  const { client } = whole
  const made = draft.today
  const last = lastAnswered(whole)
  const end = client.endedAt === null ? made : dayAt(client.endedAt, client.zone)
  const on = last === null ? end : earlierOf(end, addDays(last, SILENCE_DAYS))
  const history = historyOf(whole)
  const assessment = assess(history, on, draft.ladders)
  const log = logOf(whole, assessment)
  const course: Course = {
    ref: client.ref,
    standing: statusOf(whole),
    side: client.side,
    made,
    history,
    assessment,
    told: toldOf(whole),
    signs: signsOf(whole, words),
    activitiesFirst: (whole.screening?.answers.activities as Record<string, number> | undefined) ?? {},
    activities: whole.activities,
    decisions: decisionsOf(whole),
    rungChanges: log.rungChanges,
    stops: stopsOf(whole),
    rungs: ladderSteps(draft, whole, on),
    picture: weeksOf(history, log, on, PICTURE_WEEKS),
  }
  return reportFacts(course)
}

function toldOf(file: ClientFile): ToldAtStart {
  const answers = file.screening?.answers ?? {}
  const line = (id: string): string | null => (answers[id] === undefined ? null : String(answers[id]))
  return {
    age: answers.age === undefined ? null : Number(answers.age),
    onset: line('onset'),
    earlier: line('earlier'),
    seen: line('seen'),
    eases: line('eases'),
    risks: Array.isArray(answers.risks) ? answers.risks : null,
    known: knownSigns(file),
    lift: liftWanted(file),
  }
}

const signsOf = ({ signs, client }: ClientFile, quoted: boolean): SignRow[] =>
  signs.map(({ sign, care, day, words, state, endedAt, endedBy }) => ({
    sign,
    care,
    day,
    words: quoted ? words : null,
    state,
    ended: endedAt === null ? null : dayAt(endedAt, client.zone),
    by: endedBy,
  }))

const decisionsOf = ({ decisions }: ClientFile): Course['decisions'] =>
  decisions.flatMap(({ day, decision, ladder, reason }) =>
    // a clearance stands with the sign that it ended
    decision === 'clear' ? [] : [{ kind: 'decision', day, decision, ladder, reason }],
  )

const stopsOf = ({ holds, client }: ClientFile): Course['stops'] =>
  holds.flatMap(({ kind, day, endedAt, endedBy }): Extract<Event, { kind: 'stop' }>[] => {
    if (!isStop(kind)) return []
    const until: Day | null = endedAt === null ? null : dayAt(endedAt, client.zone)
    return [{ kind: 'stop', day, why: kind, until, by: kind === 'park' ? endedBy : null }]
  })

const isStop = (kind: HoldRow['kind']): kind is 'lock' | 'park' | 'pause' =>
  kind === 'lock' || kind === 'park' || kind === 'pause'

/** In the order of the ladders' numbers. */
function ladderSteps({ ladders }: Draft, file: ClientFile, on: Day): Course['rungs'] {
  const rungs = rungsOn(file, on)
  const resting = [...restingOn(file), ...goneLadders(rungs, ladders)]
  const number = (id: string): number => ladderOf(id, ladders)?.number ?? Number.POSITIVE_INFINITY
  return Object.entries(rungs)
    .sort(([a], [b]) => number(a) - number(b))
    .map(([ladder, rung]) => {
      const known = ladderOf(ladder, ladders)
      return { ladder, rung, last: known && lastRung(known), resting: resting.includes(ladder) }
    })
}
