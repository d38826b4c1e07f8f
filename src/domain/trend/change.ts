export interface Change {
  /** now - baseline; below 0 is better. */
  readonly change: number
  /** Of the baseline, below 0 is better; null where the baseline is 0. */
  readonly percent: number | null
}

/** Change of pain (0..10) or reach (0..6) against its baseline; null where one of them is not known. */
export function changeAgainst(baseline: number | null, now: number | null): Change | null {
  if (baseline === null || now === null) return null
  const change = now - baseline
  return { change, percent: baseline === 0 ? null : (100 * change) / baseline }
}

/** Ostelo et al. (2008) Spine 33:90-94: least change of pain that matters to a person, in points and percent. */
const LEAST = { points: 2, percent: 30 }
/** Common practice: half the pain gone is a substantial change. */
const SUBSTANTIAL_PERCENT = 50

/**
 * True where pain is better by at least 2 points and by 30 %. Both are asked for, so that neither 2 to 1
 * nor 10 to 8 counts alone. Worsening is no mirror image of it and is not judged here.
 */
export function meaningfulPain(baseline: number | null, now: number | null): boolean {
  const against = changeAgainst(baseline, now)
  if (against === null || against.percent === null) return false
  return against.change <= -LEAST.points && against.percent <= -LEAST.percent
}

/** True where the change is meaningful and at least half of the baseline. */
export function substantialPain(baseline: number | null, now: number | null): boolean {
  return meaningfulPain(baseline, now) && changeAgainst(baseline, now)!.percent! <= -SUBSTANTIAL_PERCENT
}
