import { writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { SIGN_IDS, type SignId } from '../../../src/domain/signs/catalogue.ts'
import { FeatureMap } from '../../../src/domain/signs/feature-map.ts'
import { type Book, type BookWord, stemOf } from '../../../src/domain/signs/features.ts'
import { lexiconFor } from '../../../src/domain/signs/lexicon/languages.ts'
import { readingOf } from '../../../src/domain/signs/screen.ts'
import {
  scaleOf,
  type WeightsSource,
  writtenMeaning,
  writtenNear,
} from '../../../src/domain/signs/weights.ts'
import { windowsOf } from '../../../src/domain/signs/windows.ts'
import type { Word } from '../../../src/domain/signs/words.ts'
import { type Row, repliesIn, rowsIn } from './texts.ts'

/**
 * Learns the weights of the third layer: `npx tsx tests/domain/signs/learn.ts --locale en [--folds 4] [FILE ...]`.
 * One logistic regression a sign (Cox 1958), by stochastic gradient steps scaled per feature (AdaGrad, Duchi 2011);
 * no chance in it, so the same texts give the same weights. Texts set aside (`kept`) are left out. With `--folds` it
 * prints what it would find among the texts left out of each fold, and writes nothing.
 */

interface Example {
  readonly features: readonly string[]
  readonly signs: readonly SignId[]
  readonly row: number
}

const FILES: Readonly<Record<string, readonly string[]>> = {
  en: ['en.jsonl', 'en-more.jsonl', 'en-unseen.jsonl', 'en-learned.jsonl'],
  es: ['es.jsonl', 'es-learned.jsonl'],
}
/** See `weights.ts`; chosen by the totals of the texts set aside, so that no sign of level emergency among them is lost. */
const AT: Readonly<Record<string, Pick<WeightsSource, 'ask' | 'insist' | 'doubt' | 'still'>>> = {
  en: { ask: 0.26, insist: 0.8, doubt: 0.1, still: 0.014 },
  es: { ask: 0.22, insist: 0.8, doubt: 0.1, still: 0.01 },
}
const ROUNDS = 20
/** A sign missed weighs as much as so many asked for nothing. */
const POSITIVE = 3.1
const STEP = 0.3
const SHRINK = 1e-4
/** A feature counts where so many texts have it. */
const LEAST_TEXTS = 2
const START = -2
/** Tenths below which a weight is left out. */
const LIGHT = 12

/** Check-ins in which nobody told of a sign: what is written every day must not be asked about. */
const repliesWithout = (locale: string): Row[] => repliesIn(locale).filter(({ signs }) => signs.length === 0)

class Names implements Book<string> {
  constructor(private readonly names: readonly string[]) {}
  word(word: string): BookWord<string> {
    return {
      written: word,
      number: 0,
      word,
      stem: `~${stemOf(word)}`,
      pair: (next) => `${word} ${next.written}`,
      skip: (next) => `${word} _ ${next.written}`,
    }
  }
  of({ plain }: Word): BookWord<string> {
    return this.word(plain)
  }
  meaning(kind: number, id: number): string {
    return writtenMeaning(kind, this.names[id]!)
  }
  near(first: number, second: number): string {
    return writtenNear(this.names[first]!, this.names[second]!)
  }
}

/** A text with a sign is one example; each window of a text without one is an example of ordinary talk. */
function examplesOf({ text, signs }: Row, row: number, locale: string): Example[] {
  const features = readingOf(text, locale)
  const told = new FeatureMap(features, new Names(features.reading.lexicon.names))
  const windows = windowsOf(features.reading)
  const examples = signs.length === 0 ? windows.map((window) => [window]) : [windows]
  return examples.map((some) => {
    const found = new Set<string>()
    for (const window of some) told.from(window.start).upTo(window.end, found)
    return { features: [...found], signs, row }
  })
}

interface Model {
  readonly ids: ReadonlyMap<string, number>
  readonly weights: readonly Float64Array[]
  readonly bias: readonly number[]
}

function learn(examples: readonly Example[], isKnown: (feature: string) => boolean): Model {
  const ids = new Map<string, number>()
  for (const { features } of examples)
    for (const feature of features) if (isKnown(feature) && !ids.has(feature)) ids.set(feature, ids.size)
  const inputs = examples.map(({ features }) =>
    Int32Array.from(features.map((one) => ids.get(one)).filter((id) => id !== undefined)),
  )
  const bias: number[] = []
  const weights = SIGN_IDS.map((sign) => {
    const isThere = examples.map(({ signs }) => signs.includes(sign))
    const [weight, own] = learnSign(inputs, isThere, ids.size)
    bias.push(own)
    return weight
  })
  return { ids, weights, bias }
}

function learnSign(
  inputs: readonly Int32Array[],
  isThere: readonly boolean[],
  size: number,
): [Float64Array, number] {
  const weights = new Float64Array(size)
  const steps = new Float64Array(size).fill(1e-6)
  let [bias, biasSteps] = [START, 1e-6]
  for (let round = 0; round < ROUNDS; round++)
    for (let k = 0; k < inputs.length; k++) {
      const n = (k * 7919 + round * 31) % inputs.length
      const input = inputs[n]!
      const scale = scaleOf(input.length)
      let sum = bias
      for (const id of input) sum += weights[id]! * scale
      const error = (1 / (1 + Math.exp(-sum)) - (isThere[n] ? 1 : 0)) * (isThere[n] ? POSITIVE : 1)
      for (const id of input) {
        const slope = error * scale + SHRINK * weights[id]!
        steps[id]! += slope * slope
        weights[id]! -= (STEP * slope) / Math.sqrt(steps[id]!)
      }
      biasSteps += error * error
      bias -= (STEP * error) / Math.sqrt(biasSteps)
    }
  return [weights, bias]
}

const likelihoods = ({ ids, weights, bias }: Model, features: readonly string[]): number[] => {
  const input = features.map((one) => ids.get(one)).filter((id) => id !== undefined)
  const scale = scaleOf(input.length)
  return weights.map(
    (weight, k) => 1 / (1 + Math.exp(-bias[k]! - scale * input.reduce((sum, id) => sum + weight[id]!, 0))),
  )
}

function counted(examples: readonly Example[]): (feature: string) => boolean {
  const counts = new Map<string, number>()
  for (const { features } of examples) for (const one of features) counts.set(one, (counts.get(one) ?? 0) + 1)
  return (feature) => counts.get(feature)! >= LEAST_TEXTS
}

/** Learned twice: once with everything, then with the features that weighed anything. */
function learnPruned(examples: readonly Example[], least: number): Model {
  const first = learn(examples, counted(examples))
  const heavy = new Set(
    [...first.ids]
      .filter(([, id]) => first.weights.some((weight) => Math.abs(weight[id]!) >= least))
      .map(([f]) => f),
  )
  return learn(examples, (feature) => heavy.has(feature))
}

function printFolds(examples: readonly Example[], folds: number, least: number): void {
  const found: { example: Example; likely: number[] }[] = []
  for (let fold = 0; fold < folds; fold++) {
    const model = learnPruned(
      examples.filter(({ row }) => row % folds !== fold),
      least,
    )
    for (const example of examples.filter(({ row }) => row % folds === fold))
      found.push({ example, likely: likelihoods(model, example.features) })
  }
  for (const ask of [0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6]) {
    let [signs, caught, plain, asked] = [0, 0, 0, 0]
    for (const { example, likely } of found) {
      for (const sign of example.signs) {
        signs += 1
        if (likely[SIGN_IDS.indexOf(sign)]! >= ask) caught += 1
      }
      if (example.signs.length > 0) continue
      plain += 1
      if (likely.some((one) => one >= ask)) asked += 1
    }
    console.log(JSON.stringify({ ask, signs, caught: caught / signs, plain, asked: asked / plain }))
  }
}

function written({ ids, weights, bias }: Model): WeightsSource {
  const features = [...ids].map(([feature, id]) => {
    const parts = weights
      .map((weight, k) => [k, Math.round(weight[id]! * 10)] as const)
      .filter(([, weight]) => Math.abs(weight) >= LIGHT)
    return `${feature}|${parts.map(([k, weight]) => `${k} ${weight}`).join(' ')}`
  })
  const signs = [...SIGN_IDS]
  return { ...AT[locale]!, bias: bias.map((one) => Number(one.toFixed(2))), signs, features: features.sort() }
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    locale: { type: 'string', default: 'en' },
    folds: { type: 'string' },
    least: { type: 'string', default: '1.9' },
  },
})
const { locale, folds, least } = values
const corpus = new URL('corpus/', import.meta.url)
const all = [
  ...repliesWithout(locale),
  ...FILES[locale]!.flatMap((file) => rowsIn(new URL(file, corpus))),
  ...positionals.flatMap((file) => rowsIn(file)),
].filter(({ part }) => part !== 'kept')
const rows = [...new Map(all.map((row) => [row.text, row])).values()]
const examples = rows.flatMap((row, i) => examplesOf(row, i, locale))
console.log(`${rows.length} texts, ${examples.length} examples, lexicon ${lexiconFor(locale).version}`)
if (folds === undefined) {
  const weights = written(learnPruned(examples, Number(least)))
  const path = new URL(`../../../src/domain/signs/lexicon/${locale}/weights.json`, import.meta.url)
  writeFileSync(path, `${JSON.stringify(weights, null, 2)}\n`)
  console.log(`${weights.features.length} features`)
} else printFolds(examples, Number(folds), Number(least))
