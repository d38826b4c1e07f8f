import type { ClientFile } from '../../src/engine/ports.ts'
import type { Change, Rows, Table } from '../../src/engine/rows.ts'
import type { Practice } from './practice.ts'

const LISTS = {
  rung: 'rungs',
  checkIn: 'checkIns',
  sign: 'signs',
  hold: 'holds',
  flag: 'flags',
  decision: 'decisions',
  alert: 'alerts',
  activity: 'activities',
} as const satisfies Partial<Record<Table, keyof ClientFile>>

/** Clients with the same past as one who is there: their rows, written straight into the store. */
export async function copyClient(
  practice: Practice,
  from: string,
  refs: readonly string[],
  change: (row: Rows['checkIn'], n: number) => Rows['checkIn'] = (row) => row,
): Promise<void> {
  const file = await practice.file(from)
  const { client } = file
  for (const [n, ref] of refs.entries()) {
    const id = `${client.practiceId}/${ref}`
    const own = <Row extends { id: string }>(row: Row): Row => ({
      ...row,
      id: row.id.startsWith(client.id) ? id + row.id.slice(client.id.length) : `${ref}-${row.id}`,
      clientId: id,
    })
    const changes: Change[] = [{ put: 'client', row: { ...client, id, ref, user: `user-${ref}` } }]
    for (const table of ['consent', 'screening', 'plan'] as const)
      if (file[table]) changes.push({ put: table, row: own(file[table]) } as Change)
    for (const [table, list] of Object.entries(LISTS))
      for (const row of file[list]) {
        const mine = own(row as { id: string })
        changes.push({ put: table, row: table === 'checkIn' ? change(mine as never, n) : mine } as Change)
      }
    await practice.store.store.transaction((tx) => tx.apply({ changes, postings: [] }))
  }
}

/** "client-001", "client-002", …: letters, digits and hyphens, in order. */
export const refsOf = (count: number): string[] =>
  Array.from({ length: count }, (_, n) => `rower-${String(n + 1).padStart(3, '0')}`)
