import { AsClient } from './as-client.ts'
import type { SignId } from './catalogue.ts'
import { Classifier } from './classifier.ts'
import { CUES, type Cue, type LexiconSource, lexiconShape, type Pattern } from './lexicon/shape.ts'
import { compileNet, type Net, netName } from './net-data.ts'
import { type ClassIds, type Phrase, phrasesOf, wordsIn } from './phrase-source.ts'
import { Entry, type Inheritance, type Node, Tree, within } from './phrases.ts'
import { type Speller, spellerOf } from './spelling.ts'
import { Weights } from './weights.ts'
import type { Met, TreeName } from './words.ts'

/** A pattern in one fixed order of its parts; each part is a list of classes. */
export interface Rule {
  readonly sign: SignId
  readonly parts: readonly (readonly number[])[]
  readonly within: number
  readonly across: number
  readonly unsure: boolean
  readonly alone: boolean
  readonly denialOnly: boolean
  readonly isNegative: boolean
  readonly unscored: boolean
  /** Told by a picture in everyday words, which what was learned knows nothing of. */
  readonly isPicture: boolean
  readonly isDenial: boolean
  readonly sure: number | null
  readonly needs: number | null
  readonly unless: number | null
  readonly wide: boolean
  readonly anywhere: number | null
}

/** Single words of a check-in in which no sign can be told. */
export interface Plain {
  readonly words: ReadonlySet<string>
  readonly zones: ReadonlySet<string>
  /** Before a zone such a word may mean both sides. */
  readonly pairs: ReadonlySet<string>
}

/** A lexicon made ready once, so that screening a message only looks things up. */
export interface Compiled {
  readonly version: string
  readonly roots: Readonly<Record<TreeName, Node>>
  /** How many classes there are. */
  readonly size: number
  readonly skipped: ReadonlySet<string>
  /** How others speak of the client. */
  readonly asClient: AsClient
  readonly plain: Plain
  readonly courtesies: ReadonlySet<string>
  readonly chatter: ReadonlySet<string>
  readonly answers: Readonly<Record<'words' | 'before' | 'behind', ReadonlySet<string>>>
  readonly spellings: ReadonlyMap<string, string>
  readonly cue: Readonly<Record<Cue, number>>
  /** The second layer, which only asks. */
  readonly net: Net
  /** The third layer, which was learned and only asks. */
  readonly weights: Weights | null
  /** The fourth layer, learned too. */
  readonly classifier: Classifier | null
  /** The classes by their numbers. */
  readonly names: readonly string[]
  /** Rules by the class that opens them. */
  readonly opening: readonly (readonly Rule[])[]
  readonly subjects: readonly (SignId | undefined)[]
  readonly number: Entry
  readonly unknown: Entry
  readonly speller: Speller
  readonly met: Met
}

/** The cues that name a body part, a function or a finding; all others turn a sentence and are never inherited. */
const BODY: readonly Cue[] = ['place', 'topic', 'finding', 'odd', 'cant']
const MOST_BETWEEN = 3
const BREAKS = { none: 0, comma: 1, sentence: 3 } as const

class Classes implements ClassIds {
  readonly ids = new Map<string, number>()
  constructor(names: Iterable<string>) {
    for (const name of names) if (!this.ids.has(name)) this.ids.set(name, this.ids.size)
  }
  of(name: string): number {
    const id = this.ids.get(name)
    if (id === undefined) throw new Error(`The lexicon names a class that it does not have: ${name}`)
    return id
  }
}

function orders<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]]
  return items.flatMap((item, i) =>
    orders([...items.slice(0, i), ...items.slice(i + 1)]).map((rest) => [item, ...rest]),
  )
}

function rulesOf([sign, text, options]: Pattern, classes: Classes): Rule[] {
  const idOf = (name: string | undefined): number | null => (name === undefined ? null : classes.of(name))
  const anyOrder = text.includes('&')
  const parts = text
    .split(anyOrder ? /\s*&\s*/ : /\s+/)
    .map((part) => part.split('|').map((name) => classes.of(name)))
  return (anyOrder ? orders(parts) : [parts]).map((inOrder) => ({
    sign,
    parts: inOrder,
    within: options.within ?? MOST_BETWEEN,
    across: BREAKS[options.across ?? 'comma'],
    unsure: options.unsure ?? false,
    alone: options.alone ?? false,
    denialOnly: options.denialOnly ?? false,
    unscored: options.unscored ?? false,
    isPicture: options.isPicture ?? false,
    isNegative: options.isNegative ?? false,
    isDenial: options.isDenial ?? false,
    sure: idOf(options.sure),
    needs: idOf(options.needs),
    unless: idOf(options.unless),
    wide: options.wide ?? false,
    anywhere: idOf(options.anywhere),
  }))
}

/** What the words inside a finding mean: "can't feel the paper" is numbness and tells where. */
function meaningWithin(cue: Readonly<Record<Cue, number>>): Inheritance {
  const { finding, place, topic } = cue
  const kept = CUES.filter((name) => !BODY.includes(name)).map((name) => cue[name])
  const isOfBody = (classes: ReadonlySet<number>): boolean =>
    classes.has(finding) || classes.has(place) || classes.has(topic)
  return (own, words, tree) => {
    if (words.length < 2 || !own.has(finding) || own.has(place) || own.has(topic)) return []
    const inner: number[] = []
    for (const part of within(words, tree))
      if (isOfBody(part)) for (const id of part) if (!own.has(id) && !kept.includes(id)) inner.push(id)
    return inner
  }
}

/** Checks a language's data and makes it ready; throws where the data contradict themselves. */
export function compile(source: LexiconSource): Compiled {
  const lexicon = lexiconShape.parse(source)
  const { words, circumstances, groups } = lexicon
  const classes = new Classes(
    [CUES, ...[words, circumstances, groups].map((each) => Object.keys(each))]
      .flat()
      .concat(Object.keys(lexicon.net.words).map(netName)),
  )
  const size = classes.ids.size
  const opening: Rule[][] = Array.from({ length: size }, () => [])
  for (const rule of lexicon.patterns.flatMap((pattern) => rulesOf(pattern, classes)))
    for (const id of rule.parts[0]!) opening[id]!.push(rule)
  const subjects: (SignId | undefined)[] = Array.from({ length: size }, () => undefined)
  for (const [name, sign] of Object.entries(lexicon.subjects)) subjects[classes.of(name)] = sign
  const phrases = phrasesOf(words, groups, classes)
  const asides = phrasesOf(circumstances, groups, classes)
  const { net, root, phrases: ofNet } = compileNet(lexicon, classes, size)
  const cue = Object.fromEntries(CUES.map((name) => [name, classes.of(name)])) as Record<Cue, number>
  // only words of the body and of what befalls it are worth a guess
  const guessed = [cue.place, cue.topic, cue.finding]
  const spellable = phrases.filter((phrase) => guessed.some((id) => phrase.classes.includes(id)))
  const told = new Set(net.frames.flatMap(({ parts }) => parts.flatMap((part) => part.any)))
  const tells = (phrase: Phrase): boolean => phrase.classes.some((id) => told.has(id))
  const ordinary = [...lexicon.ordinary, ...lexicon.skipped].flatMap((phrase) => phrase.split(' '))
  return {
    version: lexicon.version,
    roots: {
      main: new Tree(phrases, size, meaningWithin(cue)).root,
      net: root,
      asides: new Tree(asides, size, null).root,
    },
    net,
    classifier: lexicon.classifier === null ? null : new Classifier(lexicon.classifier),
    weights: lexicon.weights === null ? null : new Weights(lexicon.weights, classes, size),
    names: [...classes.ids.keys()],
    size,
    skipped: new Set(lexicon.skipped),
    courtesies: new Set(lexicon.courtesies),
    chatter: new Set(lexicon.chatter),
    answers: {
      words: new Set(lexicon.answers.words),
      before: new Set(lexicon.answers.before),
      behind: new Set(lexicon.answers.behind),
    },
    asClient: new AsClient(lexicon.mine),
    plain: {
      words: new Set(lexicon.plain.words),
      zones: new Set(lexicon.plain.zones),
      pairs: new Set(lexicon.plain.pairs),
    },
    spellings: new Map(Object.entries(lexicon.spellings)),
    cue,
    opening,
    subjects,
    number: new Entry([], size),
    unknown: new Entry([], size),
    speller: spellerOf(
      wordsIn(lexicon.net.spells ? [...spellable, ...ofNet.filter(tells)] : spellable),
      new Set([...wordsIn(phrases), ...wordsIn(asides), ...wordsIn(ofNet), ...ordinary]),
    ),
    met: { words: new Map(), paths: 0 },
  }
}
