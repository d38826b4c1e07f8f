import type { Store } from '../engine/ports.ts'
import type { Change, Table } from '../engine/rows.ts'

/** Tables from which it is read who is known. */
const CONCERNED: readonly Table[] = ['practice', 'client', 'plan', 'cover']

const concerns = (change: Change): boolean => CONCERNED.includes('put' in change ? change.put : change.drop)

/** The same store; `changed` is called after each commit that may change who is known. */
export function watched(store: Store, changed: () => void): Store {
  return {
    async transaction(work) {
      let dirty = false
      const result = await store.transaction((tx) =>
        work({
          ...tx,
          apply(outcome) {
            dirty ||= outcome.changes.some(concerns)
            return tx.apply(outcome)
          },
          erase(clientId, at) {
            dirty = true
            return tx.erase(clientId, at)
          },
        }),
      )
      if (dirty) changed()
      return result
    },
  }
}
