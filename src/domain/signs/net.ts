import { ClassSet } from './class-set.ts'
import type { Compiled, Rule } from './compile.ts'
import type { Match, Reading } from './match.ts'
import type { Net, NetFrame, Part } from './net-data.ts'
import { BREAK, type Unit } from './units.ts'

/** Ordinary talk counts where it stands so many words away. */
const AROUND = 5
/** Words that "not" and "can't" reach on to. */
const REACH = 4

/** A message as the net reads it. */
interface Catch {
  readonly units: readonly Unit[]
  /** The unit of the first layer that stands at the same place. */
  readonly main: readonly number[]
  readonly denied: Uint8Array
  /** 1 for a word that fails by itself ("can't find"), 2 for one that another takes away ("can't ... lift"). */
  readonly failing: Uint8Array
  readonly sentence: Int16Array
  /** The same, cut at commas too. */
  readonly phrase: Int16Array
  /** The phrases in which a number is told: values of the check-in, which make nothing beside them ordinary. */
  readonly valued: ReadonlySet<number>
  readonly isByPhrase: boolean
}

/**
 * The second layer: topics and troubles near each other, of which no pattern knows the very combination. What it
 * finds is only ever asked about, and who, when and whether it was meant are judged as everywhere.
 */
export function netMatches(units: readonly Unit[], reading: Reading): Match[] {
  const { net } = reading.lexicon
  const places = placesOf(units, reading.lexicon)
  if (places.length === 0) return NO_MATCHES
  const taken = read(units, reading, net)
  const found: Match[] = []
  for (const place of places) {
    const frame = net.frames[place]!
    const trouble = frame.parts.at(-1)!
    for (let i = 0; i < units.length; i++) {
      const at = fits(taken, trouble, i) ? catchAt(taken, frame, i) : null
      if (at !== null && !isTakenBack(reading, taken, frame, at)) found.push(matchOf(taken, frame, at))
    }
  }
  return found
}

/** The frames all of whose parts may stand in the message, in order. */
function placesOf(units: readonly Unit[], { net, size }: Compiled): number[] {
  const troubles = new Set<number>()
  for (const { entry } of units)
    for (const id of entry.classes) if (net.troubled[id]!.length > 0) troubles.add(id)
  if (troubles.size === 0) return NO_PLACES
  const told = new ClassSet(size)
  for (const { entry } of units) for (const id of entry.classes) told.add(id)
  const places = new Set<number>()
  for (const id of troubles)
    for (const place of net.troubled[id]!) if (mayStand(net.frames[place]!, told)) places.add(place)
  return places.size === 0 ? NO_PLACES : [...places].sort((a, b) => a - b)
}

function mayStand({ parts }: NetFrame, told: ClassSet): boolean {
  for (const { any } of parts) if (!told.hasAny(any)) return false
  return true
}

const NO_PLACES: number[] = []
const NO_MATCHES: Match[] = []

function read(units: readonly Unit[], reading: Reading, { deny, unable, stop, isByPhrase }: Net): Catch {
  const denied = new Uint8Array(units.length)
  const failing = new Uint8Array(units.length)
  const sentence = new Int16Array(units.length)
  const phrase = new Int16Array(units.length)
  const valued = new Set<number>()
  const main: number[] = []
  let [denial, failure] = [0, 0]
  let at = 0
  const { negated } = reading.polarity
  units.forEach((unit, i) => {
    while (at + 1 < reading.units.length && reading.units[at + 1]!.start <= unit.start) at += 1
    main.push(at)
    const parts = unit.gap > BREAK.contrast || (unit.gap === BREAK.contrast && reading.carries[at] !== 1)
    sentence[i] = (sentence[i - 1] ?? 0) + (parts ? 1 : 0)
    phrase[i] = (phrase[i - 1] ?? 0) + (unit.gap !== BREAK.none ? 1 : 0)
    if (unit.value !== null) valued.add(phrase[i]!)
    const { entry } = unit
    if (unit.gap !== BREAK.none || entry.has(stop)) [denial, failure] = [0, 0]
    denied[i] = denial > 0 || negated[at] === 1 ? 1 : 0
    // "no trouble lifting it": a failure that is denied is none
    const fails = entry.has(unable) && !(denial > 0 && !entry.has(deny))
    failing[i] = failure > 0 && denied[i] === 0 ? 2 : fails || failure > 0 ? 1 : 0
    denial = entry.has(deny) ? REACH : Math.max(0, denial - 1)
    failure = fails ? REACH : Math.max(0, failure - 1)
  })
  return { units, main, denied, failing, sentence, phrase, valued, isByPhrase }
}

function fits({ units, denied, failing }: Catch, { present, failing: lacking }: Part, i: number): boolean {
  const { entry } = units[i]!
  if (denied[i] === 0 && entry.hasAny(present)) return true
  return failing[i]! > 0 && entry.hasAny(lacking)
}

const isOne = ({ units }: Catch, i: number, classes: readonly number[]): boolean =>
  units[i]!.entry.hasAny(classes)

/** The other parts of the frame around the one that tells the trouble, nearest first, or null. */
function catchAt(taken: Catch, frame: NetFrame, anchor: number): number[] | null {
  const at = [anchor]
  const { sentence, phrase, valued, isByPhrase, units } = taken
  const [from, to] = [Math.max(0, anchor - AROUND), Math.min(units.length - 1, anchor + AROUND)]
  let needed = frame.needs.length === 0
  for (let i = from; i <= to; i++) {
    if (Math.abs(sentence[i]! - sentence[anchor]!) > frame.across) continue
    const isBeside = phrase[i] !== phrase[anchor] && (isByPhrase || valued.has(phrase[i]!))
    if (!isBeside && isOne(taken, i, frame.unless)) return null
    needed ||= isOne(taken, i, frame.needs)
  }
  if (!needed) return null
  for (const part of frame.parts.slice(0, -1)) {
    const next = nearest(taken, frame, part, at)
    if (next < 0) return null
    at.push(next)
  }
  return at.sort((a, b) => a - b)
}

/** The word nearest to the trouble that fits the part; one word never stands for two parts. */
function nearest(taken: Catch, { within, across }: NetFrame, part: Part, at: readonly number[]): number {
  const { sentence } = taken
  const anchor = at[0]!
  for (let step = 1; step <= within + 1; step++)
    for (const i of [anchor - step, anchor + step]) {
      if (i < 0 || i >= taken.units.length || at.includes(i)) continue
      if (Math.abs(sentence[i]! - sentence[anchor]!) <= across && isPart(taken, part, i)) return i
    }
  return -1
}

/** A word that tells the part; what is denied is named all the same. */
const isPart = (taken: Catch, { present, failing }: Part, i: number): boolean =>
  isOne(taken, i, present) || (taken.failing[i]! > 0 && isOne(taken, i, failing))

/** "peeing fine, numb between the legs", "no wee or poo problems": the sign's own subject is denied or said to be fine. */
function isTakenBack(
  { units, polarity, lexicon }: Reading,
  { main, failing }: Catch,
  { sign }: NetFrame,
  at: readonly number[],
): boolean {
  return at.some((i) => {
    if (failing[i] === 2) return false
    const j = main[i]!
    const isSubject = units[j]!.entry.classes.some((id) => lexicon.subjects[id] === sign)
    return isSubject && (polarity.fine[j] === 1 || polarity.negated[j] === 1)
  })
}

function matchOf({ main }: Catch, { sign }: NetFrame, at: readonly number[]): Match {
  return { rule: asks(sign), at: at.map((i) => main[i]!) }
}

/** A sign that is only asked about, found by a layer that has read the negations itself. */
export const asks = (sign: Rule['sign']): Rule => ({
  sign,
  parts: [],
  within: 0,
  across: BREAK.sentence,
  unsure: true,
  alone: false,
  denialOnly: false,
  isNegative: true,
  unscored: false,
  isPicture: false,
  isDenial: false,
  sure: null,
  needs: null,
  unless: null,
  wide: false,
  anywhere: null,
})
