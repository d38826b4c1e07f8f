import { isDay } from '../src/domain/day.ts'
import { dayAt } from '../src/domain/local-time.ts'
import { plain } from '../src/engine/answer.ts'
import type { Desk, PracticeCommand } from '../src/engine/command.ts'
import { isNoCoach } from '../src/engine/course/named-coach.ts'

/** Covers shown at once: the nearest ones. */
const SHOWN = 20

/**
 * A coach away names who stands in: alerts call the cover first in those days. One cover a coach; oneself ends it.
 * Without options: who stands in for whom, today and later.
 */
export const cover: PracticeCommand = {
  name: 'cover',
  who: 'coach-practice',
  options: [
    { name: 'from', kind: 'text', required: false },
    { name: 'until', kind: 'text', required: false },
    { name: 'by', kind: 'person', required: false },
  ],
  async run(desk, command) {
    const { tx, practice, now, texts } = desk
    const { options, actor } = command
    const { courseForCoach, commands, alerts } = texts
    const given = [options.from, options.until, options.by].filter((one) => one !== undefined)
    if (given.length === 0) return plain(await listed(desk), null)
    const [coach, standIn] = [`<@${actor.user}>`, `<@${String(options.by)}>`]
    const id = `${practice!.id}/cover/${actor.user}`
    if (coach === standIn) {
      await tx.apply({ changes: [{ drop: 'cover', id }], postings: [] })
      return plain(courseForCoach.coverEnded, null)
    }
    if (given.length < 3) return plain(courseForCoach.coverParts, null)
    const [from, until] = [String(options.from), String(options.until)]
    if (isNoCoach(practice!, command, 'by')) return plain(alerts.noCoach(standIn), null)
    const wrong = [from, until].find((day) => !isDay(day))
    if (wrong !== undefined) return plain(commands.badDay(wrong), null)
    if (until < from || until < dayAt(now, practice!.zone)) return plain(courseForCoach.coverDates, null)
    const row = { id, practiceId: practice!.id, coach, cover: standIn, from, until }
    await tx.apply({ changes: [{ put: 'cover', row }], postings: [] })
    return plain(courseForCoach.coverSet(coach, standIn, from, until), null)
  },
}

async function listed({ tx, practice, now, texts }: Desk): Promise<string> {
  const today = dayAt(now, practice!.zone)
  const ahead = (await tx.covers(practice!.id)).filter((row) => row.until >= today)
  return ahead.length === 0
    ? texts.courseForCoach.noCovers
    : texts.courseForCoach.covers(ahead.slice(0, SHOWN))
}
