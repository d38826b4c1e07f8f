import type { Delivered } from '../../src/rehearsal/player/index.ts'
import type { Sight } from './sight.ts'

/** What must hold after every step of every practice: a sentence, and what breaks it. */
export interface Invariant {
  readonly says: string
  /** Each breach in a few words; empty where it holds. */
  readonly breaches: (sight: Sight) => readonly string[]
}

const URGENT = "('emergency', 'same-day')"
const to = (ref: unknown): string => `client:${ref}`

/** Kinds of message of which somebody gets at most one about a client on one local day. */
const ONCE_A_DAY = ['prompt', 'reminder', 'nudge', 'lapse']

export const INVARIANTS: readonly Invariant[] = [
  {
    says: 'Nobody gets two prompts, reminders or nudges on one local day.',
    breaches: ({ delivered }) => twice(delivered.filter(({ kind }) => ONCE_A_DAY.includes(kind))),
  },
  {
    says: 'A message about one client never goes to another.',
    breaches: ({ fresh }) =>
      fresh
        .filter((one) => one.to.startsWith('client:') && one.about !== null && one.to !== to(one.about))
        .map((one) => `${one.kind} about ${one.about} to ${one.to}`),
  },
  {
    says: 'A plan is locked exactly while an emergency or same-day sign is open.',
    breaches: ({ rows }) =>
      rows(`select c.ref,
              exists (select 1 from Sign s where s.clientId = c.id and s.state = 'open' and s.care in ${URGENT}) sign,
              exists (select 1 from Hold h where h.clientId = c.id and h.kind = 'lock' and h.endedAt is null) lock
            from Client c where c.stage = 'enrolled'`)
        .filter(({ sign, lock }) => sign !== lock)
        .map(({ ref, sign }) => `${ref}: ${sign ? 'a sign without a lock' : 'a lock without a sign'}`),
  },
  {
    says: 'Every lock has told the client once to seek care, within a minute.',
    breaches: ({ rows, delivered, calm, now }) =>
      !calm
        ? []
        : rows(`select c.ref, count(*) locks from Hold h join Client c on c.id = h.clientId
                where h.kind = 'lock' and h.at < '${aMinuteBefore(now)}' group by c.ref`)
            .filter(({ ref, locks }) => count(delivered, to(ref), 'urgent') < Number(locks))
            .map(({ ref, locks }) => `${ref}: ${locks} locks, ${count(delivered, to(ref), 'urgent')} told`),
  },
  {
    says: 'Every alert has reached the alert channel, within a minute.',
    breaches: ({ rows, delivered, calm, now }) =>
      !calm
        ? []
        : rows(`select c.ref, count(*) alerts from Alert a join Client c on c.id = a.clientId
                where a.openedAt < '${aMinuteBefore(now)}' group by c.ref`)
            .filter(({ ref, alerts }) => alertsAbout(delivered, ref) < Number(alerts))
            .map(({ ref, alerts }) => `${ref}: ${alerts} alerts, ${alertsAbout(delivered, ref)} heard`),
  },
  {
    says: 'An alert that nobody has taken up goes on by itself for a day.',
    breaches: ({ rows, now }) =>
      rows(`select a.id from Alert a where a.takenBy is null and a.closedAt is null
              and a.openedAt > '${new Date(now.getTime() - 23 * 3_600_000).toISOString()}'
              and not exists (select 1 from Due d where d.kind = 'alert-step' and json_extract(d.data, '$.alert') = a.id)`).map(
        ({ id }) => `alert ${id} has no next step`,
      ),
  },
  {
    says: 'A sign that somebody hinted at has its deadline.',
    breaches: ({ rows }) =>
      rows(`select c.ref, s.sign from Sign s join Client c on c.id = s.clientId where s.state = 'asked'
              and not exists (select 1 from Due d where d.clientId = c.id and d.kind = 'deadline')`).map(
        ({ ref, sign }) => `${ref}: ${sign} is asked for ever`,
      ),
  },
  {
    says: 'An active client has exactly one next prompt; nobody has two.',
    breaches: ({ rows }) =>
      rows(`select c.ref, c.stage,
              exists (select 1 from Hold h where h.clientId = c.id and h.kind in ('lock', 'park', 'pause') and h.endedAt is null) held,
              exists (select 1 from Plan p where p.clientId = c.id) planned,
              (select count(*) from Due d where d.clientId = c.id and d.kind = 'prompt') prompts
            from Client c`)
        .filter(
          ({ stage, held, planned, prompts }) =>
            Number(prompts) > 1 || (stage === 'enrolled' && !held && planned && prompts === 0),
        )
        .map(({ ref, prompts }) => `${ref}: ${prompts} prompts ahead`),
  },
  {
    says: 'Whoever has left or been discharged is asked for nothing more, but for the morning word while a sign is open.',
    breaches: ({ rows }) =>
      rows(`select c.ref, d.kind from Due d join Client c on c.id = d.clientId
            where c.stage in ('left', 'discharged') and d.kind in ('prompt', 'reminder', 'activities', 'screening')
              and not (c.stage = 'discharged' and exists (select 1 from Hold h
                where h.clientId = c.id and h.kind = 'lock' and h.endedAt is null))`).map(
        ({ ref, kind }) => `${ref}: ${kind}`,
      ),
  },
  {
    says: 'In calm, nothing that is due and nothing that may be sent is left lying.',
    breaches: ({ rows, now, calm }) => {
      if (!calm) return []
      const late = new Date(now.getTime() - 5 * 60_000).toISOString()
      return [
        ...rows(`select kind, at from Due where at < '${late}'`).map(({ kind, at }) => `${kind} due ${at}`),
        ...rows(`select key, attempts from Outbox where state = 'waiting' and notBefore < '${late}'`).map(
          ({ key }) => `${key} waits`,
        ),
      ]
    },
  },
  {
    says: 'In calm, everything that a client said has been taken in.',
    breaches: ({ rows, said, calm }) =>
      !calm
        ? []
        : rows(`select c.ref, (select count(*) from Inbound i where i.clientId = c.id) taken from Client c
                where c.stage in ('enrolled', 'discharged')`)
            .filter(({ ref, taken }) => Number(taken) < (said.get(String(ref)) ?? 0))
            .map(({ ref, taken }) => `${ref}: said ${said.get(String(ref))}, taken in ${taken}`),
  },
  {
    says: 'Nothing is kept of somebody who has not agreed but the invitation, and what was urgent.',
    breaches: ({ rows }) =>
      rows(`select c.ref from Client c where c.stage = 'invited'
              and (exists (select 1 from CheckIn k where k.clientId = c.id)
                or exists (select 1 from Version v where v.clientId = c.id)
                or exists (select 1 from Screening s where s.clientId = c.id))`).map(({ ref }) => `${ref}`),
  },
  {
    says: 'A check-in lies within its scales, and its day is not ahead.',
    breaches: ({ rows, now }) =>
      rows(`select clientId, day from CheckIn where pain not between 0 and 10 or sessions not between 0 and 8
              or reach not in ('none', 'back', 'buttock', 'thigh', 'knee', 'calf', 'foot')
              or day > '${new Date(now.getTime() + 14 * 3_600_000).toISOString().slice(0, 10)}'`).map(
        ({ clientId, day }) => `${clientId} ${day}`,
      ),
  },
]

/** Drills that reach a client whose plan was locked before the step and still is. Holds its own memory of the step before. */
export function lockedWatch(): Invariant {
  let before = new Set<string>()
  return {
    says: 'While a plan is locked no message to the client names a drill.',
    breaches({ rows, fresh }) {
      const locked = new Set(
        rows(
          `select c.ref from Hold h join Client c on c.id = h.clientId where h.kind = 'lock' and h.endedAt is null`,
        ).map(({ ref }) => to(ref)),
      )
      const told = fresh.filter((one) => one.drills.length > 0 && before.has(one.to) && locked.has(one.to))
      before = locked
      return told.map((one) => `${one.kind} to ${one.to}: ${one.drills.join(', ')}`)
    },
  }
}

/** One answer that is lost long after its fault began (see `chat-faults.ts`) costs some seconds even in calm. */
const aMinuteBefore = (now: Date): string => new Date(now.getTime() - 60_000).toISOString()

const count = (delivered: readonly Delivered[], who: string, kind: string): number =>
  delivered.filter((one) => one.to === who && one.kind === kind).length

/** In the alert channel, or where that fails in the coach's or in private. */
const alertsAbout = (delivered: readonly Delivered[], ref: unknown): number =>
  delivered.filter((one) => one.kind === 'alert' && one.about === ref).length

function twice(messages: readonly Delivered[]): string[] {
  const seen = new Map<string, number>()
  for (const { to: who, kind, day, about } of messages) {
    const name = `${kind} to ${who} about ${about} on ${day}`
    seen.set(name, (seen.get(name) ?? 0) + 1)
  }
  return [...seen].filter(([, times]) => times > 1).map(([name, times]) => `${name}: ${times}`)
}
