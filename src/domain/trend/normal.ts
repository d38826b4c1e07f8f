const DENSITY_AT_0 = 1 / Math.sqrt(2 * Math.PI)
/** Below it the power series is quick and exact to rounding, above it the continued fraction. */
const SERIES_UP_TO = 3

const density = (z: number): number => DENSITY_AT_0 * Math.exp((-z * z) / 2)

/** P(0 < Z < z) by the series of Abramowitz & Stegun 26.2.11. */
function bySeries(z: number): number {
  let term = z
  let sum = z
  for (let n = 1; Math.abs(term) > sum * 1e-17; n += 1) {
    term *= (z * z) / (2 * n + 1)
    sum += term
  }
  return density(z) * sum
}

/** P(Z > z) by the continued fraction of Abramowitz & Stegun 26.2.14, from its far end inward. */
function byFraction(z: number): number {
  let rest = z
  for (let n = 120; n > 0; n -= 1) rest = z + n / rest
  return density(z) / rest
}

/** Chance that a standard normal variable is larger than z, 0..1; relative error about 1e-14. */
function normalUpper(z: number): number {
  if (Number.isNaN(z)) return Number.NaN
  if (z < 0) return 1 - normalUpper(-z)
  return z < SERIES_UP_TO ? 0.5 - bySeries(z) : byFraction(z)
}

/** Two-sided p of a standard normal z, 0..1. */
export const twoSidedP = (z: number): number => Math.min(1, 2 * normalUpper(Math.abs(z)))

/**
 * The z that cuts off the two tails outside the confidence, e.g. 1.96 for 0.95.
 * @param confidence strictly between 0 and 1; else RangeError.
 */
export function zOfConfidence(confidence: number): number {
  if (!(confidence > 0 && confidence < 1)) {
    throw new RangeError(`confidence must be between 0 and 1, got ${confidence}`)
  }
  const tail = (1 - confidence) / 2
  let z = 1
  // Newton on the logarithm of the tail: concave, so it cannot run away from any start
  for (let n = 0; n < 60; n += 1) {
    const upper = normalUpper(z)
    const step = (Math.log(upper / tail) * upper) / density(z)
    z += step
    if (Math.abs(step) < 1e-15) break
  }
  return z
}
