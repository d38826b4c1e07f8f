import type { Weeks } from '../digest/weeks.ts'

/** Words in one block of the page: a lead in bold, then the rest; both are wrapped, and cut after `most` lines. */
export interface Item {
  readonly lead?: string
  readonly words: string
  readonly most: number
}

interface Block {
  readonly title: string
  /** What stands in place of those that there was no room for. */
  readonly more: (count: number) => string
  /** Which go first where there is no room. */
  readonly drop: 'first' | 'last'
  /** So many stay while another block still has more than its own. */
  readonly least: number
}
export interface ListBlock extends Block {
  readonly kind: 'list'
  readonly items: readonly Item[]
}
export interface TableBlock extends Block {
  readonly kind: 'table'
  /** Shares of the width, one a column. */
  readonly columns: readonly number[]
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}
export interface PictureBlock {
  readonly kind: 'picture'
  readonly weeks: Weeks
}
export type PageBlock = ListBlock | TableBlock | PictureBlock

/** One page in words, before it is laid out: a head, two columns of blocks, and what stands small at the foot. */
export interface Page {
  readonly title: string
  readonly name: string
  readonly made: string
  readonly notice: string
  readonly left: readonly PageBlock[]
  readonly right: readonly PageBlock[]
  readonly foot: readonly string[]
}
