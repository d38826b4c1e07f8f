/** What a practice is called until it has a name of its own; each language has its own words for it. */
export const UNNAMED = 'the practice'
