/**
 * So long may the store take, in slices of a tenth of a second: a machine that is only busy stretches the slices, and
 * the store gets its turn between them. The platform gives 3 s, and a frightened person should not wait at all; a
 * healthy store takes some hundredths of a second.
 */
export const PATIENCE = {
  /** A sign that is plain: nothing in the record could make the answer milder in time. */
  plain: 2,
  /** One that the engine would ask back: worth a moment more, as the short way takes it for sure. */
  unsure: 12,
  /** Other words: a lock of a few seconds passes without anybody noticing. */
  other: 80,
} as const
export const SLICE_MS = 100

export const AWAY = Symbol('away')

/** What the work gives, or AWAY where it takes longer than so many slices; the work goes on. */
export async function withinSlices<T>(work: Promise<T>, slices: number): Promise<T | typeof AWAY> {
  let timer: NodeJS.Timeout | undefined
  const slice = (): Promise<typeof AWAY> =>
    new Promise((resolve) => {
      timer = setTimeout(() => resolve(AWAY), SLICE_MS)
    })
  try {
    for (let n = 1; n < slices; n += 1) {
      const first = await Promise.race([work, slice()])
      if (first !== AWAY) return first
      clearTimeout(timer)
    }
    return await Promise.race([work, slice()])
  } finally {
    clearTimeout(timer)
  }
}
