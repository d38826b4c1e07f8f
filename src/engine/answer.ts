import type { Answer } from './message.ts'

/** An answer of words alone. */
export const plain = (text: string, about: string | null, privately = false): Answer => ({
  text,
  kind: 'notice',
  about,
  drills: [],
  picture: null,
  files: [],
  asks: null,
  care: 'none',
  privately,
})
