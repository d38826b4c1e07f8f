import type { Concerned, Store } from '../engine/ports.ts'
import type { Change } from '../engine/rows.ts'

/** Whom a change concerns, as far as it may change who is known; `all` where it cannot be told. */
type Concern = { readonly client: string } | { readonly practice: string } | 'all' | null

function concernOf(change: Change): Concern {
  if ('drop' in change) return ['practice', 'client', 'plan', 'cover'].includes(change.drop) ? 'all' : null
  switch (change.put) {
    case 'practice':
      return { practice: change.row.id }
    case 'cover':
      return { practice: change.row.practiceId }
    case 'client':
      return { client: change.row.id }
    case 'plan':
      return { client: change.row.clientId }
    default:
      return null
  }
}

/**
 * The same store; `changed` is called after each commit that may change who is known, null for everybody, and `erased`
 * with each client of whom nothing is kept any more.
 */
export function watched(
  store: Store,
  changed: (concerned: Concerned | null) => void,
  erased: (clientId: string) => void,
): Store {
  return {
    async transaction(work) {
      const found: Concern[] = []
      const gone: string[] = []
      const result = await store.transaction((tx) =>
        work({
          ...tx,
          apply(outcome) {
            found.push(...outcome.changes.map(concernOf))
            return tx.apply(outcome)
          },
          erase(clientId, at) {
            found.push('all')
            gone.push(clientId)
            return tx.erase(clientId, at)
          },
        }),
      )
      gone.forEach(erased)
      const concerns = found.filter((concern) => concern !== null)
      if (concerns.length > 0) changed(together(concerns))
      return result
    },
  }
}

function together(concerns: readonly NonNullable<Concern>[]): Concerned | null {
  if (concerns.includes('all')) return null
  const some = concerns.filter((concern) => concern !== 'all')
  return {
    clients: some.flatMap((concern) => ('client' in concern ? [concern.client] : [])),
    practices: some.flatMap((concern) => ('practice' in concern ? [concern.practice] : [])),
  }
}
