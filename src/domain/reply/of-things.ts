import type { Item } from './items.ts'
import type { Language } from './lexicon/compile.ts'

const LINKS: readonly Item['cue'][] = ['be', 'was', 'soft', 'article', 'dayPart', 'now']

/** "work was awful", "bad weather": bad, but no pain. */
export function setThings(items: readonly Item[], { things }: Language): void {
  items.forEach((item, at) => {
    if (item.cue !== 'painVague') return
    let before = at - 1
    while (LINKS.includes(items[before]?.cue ?? 'mark')) before -= 1
    const near = [items[at + 1], items[before]]
    if (near.some((thing) => thing !== undefined && things.has(thing.text))) item.unread = true
  })
}
