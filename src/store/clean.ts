// PostgreSQL holds no NUL in text, and neither database holds half of a surrogate pair.
const UNFIT = /\0|\p{Surrogate}/u
const ALL_UNFIT = new RegExp(UNFIT, 'gu')
// The same two as JSON.stringify writes them.
const UNFIT_IN_JSON = /\\u0000|\\ud[89a-f]/i

/**
 * The same value with every character that a database cannot hold replaced by U+FFFD, in lists, objects and the
 * names of their fields too. A value that needs no cleaning comes back as it is.
 */
export function cleanText<T>(value: T): T {
  return UNFIT_IN_JSON.test(JSON.stringify(value) ?? '') ? (clean(value) as T) : value
}

function clean(value: unknown): unknown {
  if (typeof value === 'string') return value.replace(ALL_UNFIT, '\uFFFD')
  if (Array.isArray(value)) return value.map(clean)
  if (value === null || typeof value !== 'object' || value instanceof Date) return value
  return Object.fromEntries(Object.entries(value).map(([name, field]) => [clean(name), clean(field)]))
}
