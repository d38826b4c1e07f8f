import type { SignId } from './catalogue.ts'
import type { Frame, Lexicon } from './lexicon/shape.ts'
import { type ClassIds, type Phrase, phrasesOf } from './phrase-source.ts'
import { type Inheritance, type Node, Tree, within } from './phrases.ts'

/** One part of a frame: a word of `present`, or one of `failing` that does not work. */
export interface Part {
  readonly present: readonly number[]
  readonly failing: readonly number[]
  /** Both of them. */
  readonly any: readonly number[]
}

export interface NetFrame {
  readonly sign: SignId
  readonly parts: readonly Part[]
  readonly within: number
  readonly unless: readonly number[]
  readonly needs: readonly number[]
  /** How many sentences apart its parts may stand. */
  readonly across: number
}

/** The second layer made ready. */
export interface Net {
  readonly frames: readonly NetFrame[]
  /** By the class: the places of the frames whose trouble, their last part, it can tell. */
  readonly troubled: readonly (readonly number[])[]
  readonly idiom: number
  readonly deny: number
  readonly unable: number
  readonly stop: number
  /** Ordinary talk counts only in its own phrase. */
  readonly isByPhrase: boolean
}

const BETWEEN = 7
/** The net's classes are kept apart from those of the first layer. */
export const netName = (name: string): string => `~${name}`

/** The net's words are planted in a tree of their own; contrasts and idioms are those of the first layer. */
export function compileNet(
  { net, words }: Lexicon,
  classes: ClassIds,
  size: number,
): { net: Net; root: Node; phrases: readonly Phrase[] } {
  const idsOf = (list: string | undefined): number[] =>
    list === undefined ? [] : list.split('|').map((name) => classes.of(netName(name)))
  const own = Object.fromEntries(Object.entries(net.words).map(([name, list]) => [netName(name), list]))
  const { contrast = [], idiom = [] } = words
  const { idiom: plain } = net.words
  const both = plain === undefined ? {} : { [netName('idiom')]: [...plain, ...idiom] }
  const phrases = phrasesOf({ ...own, ...both, contrast }, {}, classes)
  // what the language lacks is a class that nothing tells
  const cueOf = (name: string): number => (net.words[name] === undefined ? size : classes.of(netName(name)))
  const ordinary = net.frames.flatMap(([, , { unless }]) => unless?.split('|') ?? [])
  const silent = ['idiom', 'deny', 'stop', ...ordinary].map(cueOf)
  const frames = net.frames.map((frame) => frameOf(frame, idsOf))
  return {
    root: new Tree(phrases, size, meaningWithin(silent)).root,
    net: {
      frames,
      troubled: troubledBy(frames, size),
      idiom: cueOf('idiom'),
      deny: cueOf('deny'),
      unable: cueOf('unable'),
      stop: cueOf('stop'),
      isByPhrase: net.within === 'phrase',
    },
    phrases,
  }
}

/** A phrase means what its words mean too ("gone limp" is limp), an idiom aside; what denies stays with its word. */
function meaningWithin([idiom, deny, ...others]: readonly number[]): Inheritance {
  const silent = [idiom, deny, ...others]
  return (own, words, tree) => {
    const says = words.some((word) => tree.ownOf([word])?.has(deny!))
    if (own.has(idiom!) || says) return []
    const inner: number[] = []
    for (const part of within(words, tree)) for (const id of part) if (!silent.includes(id)) inner.push(id)
    return inner
  }
}

function troubledBy(frames: readonly NetFrame[], size: number): number[][] {
  const troubled: number[][] = Array.from({ length: size }, () => [])
  frames.forEach(({ parts }, place) => {
    for (const id of new Set(parts.at(-1)!.any)) troubled[id]!.push(place)
  })
  return troubled
}

function frameOf([sign, text, options]: Frame, idsOf: (list: string | undefined) => number[]): NetFrame {
  const parts = text.split(/\s*&\s*/).map((part): Part => {
    const names = part.split('|')
    const failing = names.filter((name) => name.startsWith('-')).map((name) => name.slice(1))
    const present = names.filter((name) => !name.startsWith('-')).flatMap(idsOf)
    const lacking = failing.flatMap(idsOf)
    return { present, failing: lacking, any: [...present, ...lacking] }
  })
  return {
    sign,
    parts,
    within: options.within ?? BETWEEN,
    unless: idsOf(options.unless),
    needs: idsOf(options.needs),
    across: options.across === true ? 1 : 0,
  }
}
