// Heavier than any barbell of a practice: a slip of the finger, not a load.
const MOST = 400
const LOAD = /^(\d{1,3}(?:[.,]\d{1,2})?)\s*(kg|kilos?|lbs?|pounds?)\b\.?\s*(.{0,40})$/iu

interface Load {
  readonly amount: number
  readonly unit: 'kg' | 'lb'
  /** What it is, where that was said: "bell". */
  readonly what: string
}

function loadOf(text: string): Load | null {
  const [, amount, unit, what] = LOAD.exec(text.trim()) ?? []
  if (amount === undefined || unit === undefined) return null
  const number = Number(amount.replace(',', '.'))
  if (number <= 0 || number > MOST) return null
  return { amount: number, unit: /^k/i.test(unit) ? 'kg' : 'lb', what: what ?? '' }
}

/** A load as a number with its unit ("5,0 kilos bell" is "5 kg bell"); null where it is none, or above 400. */
export function readLoad(text: string): string | null {
  const load = loadOf(text)
  return load === null ? null : [load.amount, load.unit, load.what].filter((part) => part !== '').join(' ')
}

/** True where both are loads of one unit and the first is the heavier. */
export function isMoreThan(load: string, other: string): boolean {
  const [a, b] = [loadOf(load), loadOf(other)]
  return a !== null && b !== null && a.unit === b.unit && a.amount > b.amount
}
