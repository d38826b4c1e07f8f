/** How soon somebody must be seen, in rising order. */
export const CARES = ['none', 'soon', 'same-day', 'emergency'] as const
export type Care = (typeof CARES)[number]

/** The higher of two levels of care. */
export const higherCare = (a: Care, b: Care): Care => (CARES.indexOf(a) >= CARES.indexOf(b) ? a : b)

/** An emergency or same-day sign stops the drills and locks the plan. */
export const stopsDrills = (care: Care): boolean => care === 'emergency' || care === 'same-day'

/** The highest of several; two or more of level `soon` make same-day. */
export function careOfSigns(cares: readonly Care[]): Care {
  const highest = cares.reduce<Care>(higherCare, 'none')
  return highest === 'soon' && cares.filter((care) => care === 'soon').length >= 2 ? 'same-day' : highest
}
