/** Fields of the output that a corpus may state; those left out are not compared. */
export type Expected = Readonly<Record<string, unknown>>

export interface Tally {
  replies: number
  right: number
  /** Values of sessions, reach, pain: stated, right, and wrong without asking. */
  slots: number
  slotsRight: number
  silent: number
}

const SLOTS = ['sessions', 'reach', 'pain'] as const
export const emptyTally = (): Tally => ({ replies: 0, right: 0, slots: 0, slotsRight: 0, silent: 0 })

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

/** A slot is right where its value is and it is asked back just where it should be. */
function slotRight(slot: string, expected: Expected, given: Expected): boolean {
  const asks = (of: Expected): boolean => Array.isArray(of.unsure) && of.unsure.includes(slot)
  return (
    same(expected[slot], given[slot]) && (expected.unsure === undefined || asks(expected) === asks(given))
  )
}

const sorted = (value: unknown): unknown =>
  Array.isArray(value) && typeof value[0] === 'string' ? [...value].sort() : value

/** Compares one reading with what the corpus states and adds it to the tally; answers the fields that differ. */
export function tally(sum: Tally, expected: Expected, given: Expected): string[] {
  sum.replies += 1
  for (const slot of SLOTS) {
    if (!(slot in expected)) continue
    sum.slots += 1
    if (slotRight(slot, expected, given)) sum.slotsRight += 1
    if (given[slot] !== null && !same(expected[slot], given[slot])) sum.silent += 1
  }
  const wrong = Object.keys(expected).filter((field) => !same(sorted(expected[field]), sorted(given[field])))
  if (wrong.length === 0) sum.right += 1
  return wrong
}

const percent = (part: number, whole: number): string =>
  whole === 0 ? '-' : `${((100 * part) / whole).toFixed(2)} %`

export const scoreLine = (name: string, sum: Tally): string =>
  `${name}: ${sum.replies} replies, wholly right ${percent(sum.right, sum.replies)}, ` +
  `slots right ${percent(sum.slotsRight, sum.slots)}, silently wrong ${percent(sum.silent, sum.slots)}`
