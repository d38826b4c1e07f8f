import { type Item, isBreak, isStrong } from './items.ts'

export const endOfChunk = (items: readonly Item[], from: number): number => {
  let at = from
  while (!isBreak(items[at])) at += 1
  return at
}

export const startOfChunk = (items: readonly Item[], from: number): number => {
  let at = from
  while (at > 0 && !isBreak(items[at - 1])) at -= 1
  return at
}

export function endOfSentence(items: readonly Item[], from: number): number {
  let at = from
  while (!isStrong(items[at])) at += 1
  return at
}
