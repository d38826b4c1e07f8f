import { isDay } from '../src/domain/day.ts'
import { dayAt } from '../src/domain/local-time.ts'
import { plain } from '../src/engine/answer.ts'
import type { PracticeCommand } from '../src/engine/command.ts'
import { isNoCoach } from '../src/engine/course/named-coach.ts'

/** A coach away names who stands in: alerts call the cover first in those days. One cover a coach; oneself ends it. */
export const cover: PracticeCommand = {
  name: 'cover',
  who: 'coach-practice',
  options: [
    { name: 'from', kind: 'text', required: true },
    { name: 'until', kind: 'text', required: true },
    { name: 'by', kind: 'person', required: true },
  ],
  async run({ tx, practice, now, texts }, command) {
    const { options, actor } = command
    const { courseForCoach, commands, alerts } = texts
    const [from, until] = [String(options.from), String(options.until)]
    const [coach, standIn] = [`<@${actor.user}>`, `<@${String(options.by)}>`]
    const id = `${practice!.id}/cover/${actor.user}`
    if (coach === standIn) {
      await tx.apply({ changes: [{ drop: 'cover', id }], postings: [] })
      return plain(courseForCoach.coverEnded, null)
    }
    if (isNoCoach(practice!, command, 'by')) return plain(alerts.noCoach(standIn), null)
    const wrong = [from, until].find((day) => !isDay(day))
    if (wrong !== undefined) return plain(commands.badDay(wrong), null)
    if (until < from || until < dayAt(now, practice!.zone)) return plain(courseForCoach.coverDates, null)
    const row = {
      id,
      practiceId: practice!.id,
      coach,
      cover: standIn,
      from,
      until,
    }
    await tx.apply({ changes: [{ put: 'cover', row }], postings: [] })
    return plain(courseForCoach.coverSet(coach, standIn, from, until), null)
  },
}
