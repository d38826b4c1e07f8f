import { describe, expect, it } from 'vitest'
import { numberOf, phrasesOf, wordsIn } from '../../../src/domain/signs/phrase-source.ts'
import { Tree } from '../../../src/domain/signs/phrases.ts'

const IDS: Readonly<Record<string, number>> = { cant: 0, leg: 1, filler: 2 }
const ids = { of: (name: string) => IDS[name]! }

function classesOf(words: Record<string, string[]>, phrase: string): number[] {
  const tree = new Tree(phrasesOf(words, {}, ids), 3, null)
  return [...(tree.ownOf(phrase.split(' ').map(numberOf)) ?? [])]
}

describe('the tree of phrases', () => {
  it('reads every choice, the empty one too', () => {
    const words = { leg: ['(my/the/) (left/right/) leg(/s)'] }
    for (const phrase of ['leg', 'legs', 'my leg', 'left legs', 'the right leg'])
      expect(classesOf(words, phrase), phrase).toEqual([1])
    for (const phrase of ['my', 'left my leg', 'my leg leg'])
      expect(classesOf(words, phrase), phrase).toEqual([])
  })

  it('reads a phrase without its apostrophe, but not where that is another word', () => {
    const words = { cant: ["i'll", "can't lift"], filler: ['ill'] }
    expect(classesOf(words, 'cant lift')).toEqual([0])
    expect(classesOf(words, "i'll")).toEqual([0])
    expect(classesOf(words, 'ill')).toEqual([2])
  })

  it('joins the classes of one phrase', () => {
    expect(classesOf({ leg: ['dead (leg/foot)'], cant: ['dead leg'] }, 'dead leg').sort()).toEqual([0, 1])
  })

  it('never multiplies choices: sixteen places of ten choices each cost no more than their words', () => {
    const choices = Array.from({ length: 10 }, (_, i) => `w${i}`).join('/')
    const long = Array.from({ length: 16 }, () => `(${choices}/)`).join(' ')
    const phrases = phrasesOf({ leg: [long] }, {}, ids)
    expect(wordsIn(phrases)).toHaveLength(10)
    expect(classesOf({ leg: [long] }, Array.from({ length: 16 }, () => 'w3').join(' '))).toEqual([1])
  })
})
