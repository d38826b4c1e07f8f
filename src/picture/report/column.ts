import type { PageBlock } from '../../domain/report/page.ts'
import { BLOCK_GAP, type Placed, type Placing, partsOf, place, type Setting } from './block.ts'
import type { SheetMark } from './sheet.ts'

interface Place extends Setting {
  readonly x: number
  readonly top: number
  readonly bottom: number
}

/**
 * Blocks one below the other, always within the column: while they are too long the longest block that has parts to
 * spare leaves one out, and says how many it left out.
 */
export function column(blocks: readonly PageBlock[], { x, top, bottom, ...setting }: Place): SheetMark[] {
  const placings: Placing[] = blocks.map((block) => ({ block, hidden: 0 }))
  const placed = placings.map((placing) => place(placing, setting))
  while (heightOf(placed) > bottom - top) {
    const longest = longestToSpare(placings, placed)
    if (longest === null) break
    const { block, hidden } = placings[longest]!
    placings[longest] = { block, hidden: hidden + 1 }
    placed[longest] = place(placings[longest]!, setting)
  }
  let at = top
  return placed.flatMap(({ height, marks }) => {
    const moved = marks.map((mark): SheetMark => ({ ...mark, x: mark.x + x, y: mark.y + at }))
    at += height + BLOCK_GAP
    return moved
  })
}

const heightOf = (placed: readonly Placed[]): number =>
  placed.reduce((sum, { height }) => sum + height + BLOCK_GAP, -BLOCK_GAP)

/** The longest block above its least; where none is, the longest that has anything left. */
function longestToSpare(placings: readonly Placing[], placed: readonly Placed[]): number | null {
  const left = ({ block, hidden }: Placing): number => partsOf(block) - hidden
  const leastOf = ({ block }: Placing): number => (block.kind === 'picture' ? 0 : block.least)
  const longest = (above: (placing: Placing) => number): number | null => {
    let found: number | null = null
    for (const [n, placing] of placings.entries()) {
      if (left(placing) <= above(placing)) continue
      if (found === null || placed[n]!.height > placed[found]!.height) found = n
    }
    return found
  }
  return longest(leastOf) ?? longest(() => 0)
}
