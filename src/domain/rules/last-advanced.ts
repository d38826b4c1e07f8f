import type { LadderId } from '../ladder/plan.ts'
import { lastAdvance, risesOf } from '../ladder/rises.ts'
import { daysOf, onceOf, type View } from './view.ts'

const rises = onceOf((whole) => risesOf(daysOf(whole)))

/** The latest advance up to the view's last day, by the coach's decisions or by the rungs of the days. */
export const lastAdvanceOf = (view: View) => lastAdvance(rises(view), view.history.decisions, view.on)

/** The ladder last advanced; null where nothing was. */
export const lastAdvancedLadder = (view: View): LadderId | null => lastAdvanceOf(view)?.ladder ?? null
