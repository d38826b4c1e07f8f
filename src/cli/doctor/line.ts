/** One check and how it stands. */
export interface Line {
  readonly state: 'ok' | 'not ok' | 'not checked'
  readonly check: string
  /** What was found; the mend where it is not well. */
  readonly says: string
}

export const ok = (check: string, says: string): Line => ({ state: 'ok', check, says })
export const notOk = (check: string, says: string): Line => ({ state: 'not ok', check, says })
export const notChecked = (check: string, says: string): Line => ({ state: 'not checked', check, says })

/** One line whatever a text holds. */
export const shown = ({ state, check, says }: Line): string =>
  `${state}: ${check}: ${says.replace(/\s+/g, ' ')}`
