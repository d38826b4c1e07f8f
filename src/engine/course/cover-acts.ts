import { isDay } from '../../domain/day.ts'
import { dayAt } from '../../domain/local-time.ts'
import type { Desk } from '../command.ts'

/** Covers shown at once: the nearest ones. */
const SHOWN = 20

/** Days for which a coach names who stands in, as typed. */
interface Absence {
  /** Platform id of the coach who is away. */
  readonly user: string
  readonly from: string | null
  readonly until: string | null
  /** Platform id of whoever stands in: oneself ends the cover. */
  readonly by: string | null
  /** The chat knows that whoever stands in is no coach. */
  readonly byNoCoach: boolean
}

/** Who stands in for whom, today and later. */
export async function coversAhead({ tx, practice, now, texts }: Desk): Promise<string> {
  const today = dayAt(now, practice!.zone)
  const ahead = (await tx.covers(practice!.id)).filter((row) => row.until >= today)
  return ahead.length === 0
    ? texts.courseForCoach.noCovers
    : texts.courseForCoach.covers(ahead.slice(0, SHOWN))
}

/** Sets or ends the one cover of a coach; gives what the coach reads. */
export async function coverFor(desk: Desk, absence: Absence): Promise<string> {
  const { tx, now, texts } = desk
  const practice = desk.practice!
  const { user, from, until, by } = absence
  const { courseForCoach, commands, alerts } = texts
  const [coach, standIn] = [`<@${user}>`, `<@${by}>`]
  const id = `${practice.id}/cover/${user}`
  if (coach === standIn) {
    await tx.apply({ changes: [{ drop: 'cover', id }], postings: [] })
    return courseForCoach.coverEnded
  }
  if (from === null || until === null || by === null) return courseForCoach.coverParts
  if (absence.byNoCoach) return alerts.noCoach(standIn)
  const wrong = [from, until].find((day) => !isDay(day))
  if (wrong !== undefined) return commands.badDay(wrong)
  if (until < from || until < dayAt(now, practice.zone)) return courseForCoach.coverDates
  const row = { id, practiceId: practice.id, coach, cover: standIn, from, until }
  await tx.apply({ changes: [{ put: 'cover', row }], postings: [] })
  return courseForCoach.coverSet(coach, standIn, from, until)
}
