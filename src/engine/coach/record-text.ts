import { addDays } from '../../domain/day.ts'
import type { Texts } from '../../text/index.ts'
import type { Draft } from '../draft.ts'
import { rungsOn } from '../plan/rungs.ts'
import { statusOf } from '../status.ts'

/** Days that the short record shows. */
const DAYS = 14

/** The last two weeks of a record, a line a day: the same for client and coach. */
export function recordText(draft: Draft, texts: Texts): string {
  const { words, client } = texts
  const since = addDays(draft.today, 1 - DAYS)
  const rows = draft.file.checkIns.filter((row) => row.day >= since).sort((a, b) => (a.day < b.day ? -1 : 1))
  return client.record({
    status: words.status(statusOf(draft.file)),
    rungs: rungsOn(draft.file, draft.today),
    lines: rows.map((row) => {
      const later = row.filled > row.day ? ` (${words.filledLater})` : ''
      const signs = row.signs.map((sign) => texts.signs[sign].short)
      return `${words.date(row.day)}: ${[words.values(row), ...signs].filter(Boolean).join(', ')}${later}`
    }),
  })
}
