import { zOfConfidence } from './normal.ts'

/**
 * Wilson score interval of a share, without continuity correction (Newcombe 1998, method 3), as 0..1.
 * @param done 0..of; more than `of` (sessions beyond the plan) counts as all
 * @returns null where there is nothing to share (`of` is 0) or the counts cannot be right
 */
export function wilson(
  done: number,
  of: number,
  confidence = 0.95,
): { readonly low: number; readonly high: number } | null {
  if (!(of > 0) || !(done >= 0)) return null
  const share = Math.min(1, done / of)
  const z2 = zOfConfidence(confidence) ** 2
  const middle = share + z2 / (2 * of)
  const half = Math.sqrt(z2 * ((share * (1 - share)) / of + z2 / (4 * of * of)))
  const scale = 1 + z2 / of
  // none and all are exact ends; the formula leaves dust of 1e-17 there
  const low = share === 0 ? 0 : Math.max(0, (middle - half) / scale)
  const high = share === 1 ? 1 : Math.min(1, (middle + half) / scale)
  return { low, high }
}
