import { assessmentJson } from '../../assessment-json.ts'
import { careOfSigns } from '../../domain/care.ts'
import { addDays, type Day } from '../../domain/day.ts'
import { assess } from '../../domain/rules/assess.ts'
import { careOf } from '../../domain/signs/catalogue.ts'
import { historyOf } from '../../engine/history.ts'
import { rungsOn } from '../../engine/plan/rungs.ts'
import type { ClientFile } from '../../engine/ports.ts'
import type { CheckInRow, VersionRow } from '../../engine/rows.ts'
import { statusOf } from '../../engine/status.ts'
import type { Script } from '../scenario/index.ts'
import type { Stage } from './stage.ts'

/** Where a client stands at the end; a client of whom nothing is kept any more has left. */
export interface ClientEnd {
  readonly ref: string
  readonly status: string
  readonly plan: { readonly sessions: number; readonly rungs: Readonly<Record<string, number>> } | null
  readonly assessment: ReturnType<typeof assessmentJson> | null
  readonly records: readonly object[]
}

export async function clientEnds({ clients, start, days }: Script, stage: Stage): Promise<ClientEnd[]> {
  const last = addDays(start, days - 1)
  const ends: ClientEnd[] = []
  for (const { ref } of clients) ends.push(await clientEnd(ref, last, stage))
  return ends
}

function clientEnd(ref: string, last: Day, stage: Stage): Promise<ClientEnd> {
  return stage.store.store.transaction(async (tx) => {
    const file = await tx.clientByRef(stage.cast.guild, ref)
    if (!file) return { ref, status: 'left', plan: null, assessment: null, records: [] }
    const { checkIns, versions } = await tx.told(file.client.id)
    return {
      ref,
      status: statusOf(file),
      plan: planOf(file, last),
      assessment: assessmentJson(assess(historyOf(file), last)),
      records: checkIns.map((row) => recordOf(row, versions)),
    }
  })
}

const planOf = (file: ClientFile, on: Day): ClientEnd['plan'] =>
  file.plan ? { sessions: file.plan.sessions, rungs: rungsOn(file, on) } : null

const recordOf = (row: CheckInRow, versions: readonly VersionRow[]) => ({
  day: row.day,
  sessions: row.sessions,
  reach: row.reach,
  pain: row.pain,
  signs: row.signs,
  denied: row.denied === 'all' ? ['all'] : (row.denied ?? []),
  care: careOfSigns(row.signs.map(careOf)),
  filled: row.filled,
  words: versions.filter((one) => one.day === row.day && one.via !== 'form').map((one) => one.words),
})
