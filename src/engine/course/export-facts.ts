import type { ClientExport, DayFacts, Version } from '../../domain/export/facts.ts'
import { EXPORT_FORMAT } from '../../domain/export/facts.ts'
import { baselineOf } from '../history.ts'
import type { ClientFile, Kept } from '../ports.ts'
import type { AlertRow, DecisionRow, FlagRow, HoldRow, RungRow, SignRow, VersionRow } from '../rows.ts'
import { statusOf } from '../status.ts'

/** What an export holds beside the facts themselves. */
export interface ExportWish {
  /** The client's own words; false where the practice keeps them out of the coach's channel. */
  readonly words: boolean
  /** The coach's notes. */
  readonly notes: boolean
}

/** Everything kept of a client as the document that is handed out. */
export function exportFacts(
  file: ClientFile,
  kept: Kept,
  { words, notes }: ExportWish,
  now: Date,
): ClientExport {
  const { practice } = file
  return {
    format: EXPORT_FORMAT,
    made: now.toISOString(),
    leftOut: [...(notes ? [] : (['notes'] as const)), ...(words ? [] : (['words'] as const))],
    practice: { name: practice.name, zone: practice.zone, retentionDays: practice.retentionDays },
    client: clientOf(file),
    consents: kept.consent.map(({ answer, at, version, sexualQuestions }) => ({
      answer,
      at: iso(at),
      version,
      sexualQuestions,
    })),
    screenings: kept.screening.map(({ answers, startedAt, doneAt }) => ({
      answers,
      started: iso(startedAt),
      done: maybe(doneAt),
    })),
    baseline: baselineOf(file),
    plans: kept.plan.map(({ day, at, sessions, loads, gate, checked }) => ({
      day,
      at: iso(at),
      sessions,
      loads,
      gate,
      checked,
    })),
    rungs: kept.rung.map(rungOf),
    checkIns: daysOf(kept, words),
    otherWords: words ? otherWords(kept) : [],
    signs: kept.sign.map((row) => signOf(row, words)),
    holds: kept.hold.map(holdOf),
    flags: kept.flag.map(flagOf),
    decisions: kept.decision.map(decisionOf),
    alerts: kept.alert.map(alertOf),
    activities: kept.activity.map(({ day, at, scores }) => ({ day, at: iso(at), scores })),
    questions: kept.question.map((row) => ({
      at: iso(row.at),
      words: words ? row.words : '',
      answered: maybe(row.answeredAt),
      answer: row.answer,
    })),
    messages: words ? messagesOf(kept) : [],
    ...(notes ? { notes: kept.note.map(({ at, text }) => ({ at: iso(at), text })) } : {}),
  }
}

const iso = (at: Date): string => at.toISOString()
const maybe = (at: Date | null): string | null => (at === null ? null : iso(at))
/** People of the practice are named by what they are: who they are is not the client's data. */
const who = <T extends string | null>(by: T): T => (by?.startsWith('<@') ? ('coach' as T) : by)

function clientOf(file: ClientFile): ClientExport['client'] {
  const { client } = file
  const { user, zone, region, language, prompt, reminder, side, start, remind } = client
  return {
    alias: client.ref,
    user,
    status: statusOf(file),
    zone,
    region,
    language,
    prompt,
    reminder,
    daysOff: client.off,
    side,
    inWords: client.wordsOnly,
    start,
    remind,
    created: iso(client.createdAt),
    ended: maybe(client.endedAt),
  }
}

const versionOf = ({ at, zone, via, words, reading, lexicon }: VersionRow): Version => ({
  at: iso(at),
  zone,
  via,
  words,
  reading,
  lexicon,
})

function daysOf(kept: Kept, words: boolean): DayFacts[] {
  return kept.checkIn.map(({ id: _, clientId: __, updatedAt, ...day }) => ({
    ...day,
    updated: iso(updatedAt),
    versions: words ? kept.version.filter((version) => version.day === day.day).map(versionOf) : [],
  }))
}

function otherWords({ checkIn, version }: Kept): ClientExport['otherWords'] {
  const days = new Set<string | null>(checkIn.map(({ day }) => day))
  return version.filter(({ day }) => !days.has(day)).map((row) => ({ ...versionOf(row), day: row.day }))
}

const rungOf = ({ day, at, ladder, from, to, why, by }: RungRow) => ({
  day,
  at: iso(at),
  ladder,
  from,
  to,
  why,
  by: who(by),
})

const signOf = ({ sign, care, state, day, at, words, endedAt, endedBy }: SignRow, quoted: boolean) => ({
  sign,
  care,
  state,
  day,
  at: iso(at),
  words: quoted ? words : '',
  ended: maybe(endedAt),
  endedBy: who(endedBy),
})

const holdOf = ({ kind, ladder, reason, day, at, by, endedAt, endedBy }: HoldRow) => ({
  kind,
  ladder,
  reason,
  day,
  at: iso(at),
  by: who(by),
  ended: maybe(endedAt),
  endedBy: who(endedBy),
})

const flagOf = ({ rule, level, day, figures, openedAt, closedAt }: FlagRow) => ({
  rule,
  level,
  day,
  figures,
  opened: iso(openedAt),
  closed: maybe(closedAt),
})

const decisionOf = ({ day, at, by, decision, ladder, reason, proposal, rules }: DecisionRow) => ({
  day,
  at: iso(at),
  by: who(by),
  decision,
  ladder,
  reason,
  proposal,
  rules,
})

const alertOf = ({ signs, care, openedAt, takenBy, takenAt, had, outcome, closedAt }: AlertRow) => ({
  signs,
  care,
  opened: iso(openedAt),
  takenBy: who(takenBy),
  taken: maybe(takenAt),
  had: had.map(({ by, at }) => ({ by: who(by), at })),
  outcome,
  closed: maybe(closedAt),
})

/** What reached the client; what went to the coach about them repeats what stands elsewhere. */
const messagesOf = ({ outbox }: Kept): ClientExport['messages'] =>
  outbox.flatMap(({ sentAt, body }) =>
    sentAt === null || body.address.to !== 'client' || body.text === ''
      ? []
      : [{ at: iso(sentAt), kind: body.kind, text: body.text }],
  )
