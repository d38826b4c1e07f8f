export interface Random {
  /** Evenly over 0 (included) to 1 (not included). */
  uniform(): number
  /** Standard normal. */
  normal(): number
}

/** Finaliser of MurmurHash3 (A. Appleby, public domain): neighbouring seeds give unlike states. */
function mix(value: number): number {
  let h = value >>> 0
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return (h ^ (h >>> 16)) >>> 0
}

const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by))

/** Whole numbers 0..2^32-1 by xoshiro128** 1.1 (D. Blackman and S. Vigna, prng.di.unimi.it). State: 4 words, not all 0. */
export function xoshiro128ss(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state
  return () => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0
    const shifted = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= shifted
    d = rotate(d, 11)
    return result
  }
}

/** The same numbers on every machine for the same seed and stream (whole numbers, their low 32 bits count). */
export function randomOf(seed: number, stream: number): Random {
  const base = mix(mix(seed) + Math.imul(stream, 0x9e3779b9))
  const word = (n: number): number => mix(base + Math.imul(n, 0x9e3779b9))
  const next = xoshiro128ss([word(1), word(2), word(3), word(4) | 1])
  let spare: number | null = null

  const uniform = (): number => ((next() >>> 5) * 67_108_864 + (next() >>> 6)) / 9_007_199_254_740_992

  // polar method (Marsaglia 1964): needs only log and square root
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare
      spare = null
      return kept
    }
    for (;;) {
      const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1]
      const r = x * x + y * y
      if (r >= 1 || r === 0) continue
      const scale = Math.sqrt((-2 * Math.log(r)) / r)
      spare = y * scale
      return x * scale
    }
  }
  return { uniform, normal }
}

export const uniformIn = (random: Random, low: number, high: number): number =>
  low + (high - low) * random.uniform()

/** Log-normal with this median, and this standard deviation of its logarithm. */
export const logNormal = (random: Random, median: number, sigma: number): number =>
  median * Math.exp(sigma * random.normal())

/** Beta(a, b) for whole a and b >= 1: the a-th smallest of a + b - 1 even draws. */
export function beta(random: Random, a: number, b: number): number {
  const draws = Array.from({ length: a + b - 1 }, () => random.uniform())
  return draws.sort((x, y) => x - y)[a - 1]!
}
