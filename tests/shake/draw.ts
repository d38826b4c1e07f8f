import { type Random, randomOf } from '../../src/domain/diaries/random.ts'

/** Draws from a seed: the same seed gives the same practice, day by day, on every machine. */
export interface Draw {
  /** True in so many of a hundred cases. */
  chance(percent: number): boolean
  /** A whole number, both ends included. */
  whole(low: number, high: number): number
  one<T>(list: readonly T[]): T
  /** One of the names, each as often as its weight says. */
  weighed<T extends string>(weights: Readonly<Record<T, number>>): T
}

export function drawOf(seed: number): Draw {
  const random: Random = randomOf(seed, 0)
  const below = (n: number): number => Math.floor(random.uniform() * n)
  const chance = (percent: number): boolean => random.uniform() * 100 < percent
  const whole = (low: number, high: number): number => low + below(high - low + 1)
  return {
    chance,
    whole,
    one: (list) => list[below(list.length)]!,
    weighed(weights) {
      const entries = Object.entries(weights) as [keyof typeof weights, number][]
      let left = random.uniform() * entries.reduce((sum, [, weight]) => sum + weight, 0)
      for (const [name, weight] of entries) {
        left -= weight
        if (left < 0) return name
      }
      return entries.at(-1)![0]
    },
  }
}

/** "08:05", between two whole hours. */
export function timeIn(draw: Draw, from: number, to: number): string {
  const two = (n: number): string => String(n).padStart(2, '0')
  return `${two(draw.whole(from, to - 1))}:${two(draw.whole(0, 59))}`
}
