import { describe, expect, it } from 'vitest'
import { isCaudaEquina, SIGN_IDS } from '../../src/domain/signs/catalogue.ts'
import { SAY_CAUDA_EQUINA, SIGN_WORDS, sayThere } from '../../src/text/en/signs.ts'
import { gradeLevel, mean } from './reading-level.ts'

const words = SIGN_IDS.map((id) => [id, SIGN_WORDS[id]] as const)

describe('the words of the urgent signs', () => {
  it('are there for every sign of the catalogue', () => {
    expect(Object.keys(SIGN_WORDS).sort()).toEqual([...SIGN_IDS].sort())
  })

  it('fit where they are shown', () => {
    for (const [id, { label, short }] of words) {
      expect(label.length, id).toBeLessThanOrEqual(90)
      expect(label.length, id).toBeGreaterThan(10)
      expect(short.length, id).toBeLessThanOrEqual(50)
    }
    expect(new Set(words.map(([, { label }]) => label)).size).toBe(words.length)
    // a select menu holds 25 options, "none of these" among them
    expect(words.length + 1).toBeLessThanOrEqual(25)
  })

  it('ask for what is new or changed, as one question with yes or no', () => {
    for (const [id, { question }] of words) {
      expect(question, id).toMatch(/^(Is|Are|Do|Did|Have|Has)\b[^?]*\?( Say yes .*\.)?$/)
      if (id !== 'self-harm') expect(question, id).toMatch(/\bnew(ly)?\b|\bchanged\b/)
    }
  })

  it('promise nothing and name no condition', () => {
    for (const [, { label, question, short }] of words)
      for (const text of [label, question, short])
        expect(text).not.toMatch(/\bsafe|all clear|diagnos|\bfine\b|cauda|embol|aneurysm|infection|fracture/i)
  })

  it('are in plain words', () => {
    const grades = words.map(([, { question }]) => gradeLevel(question))
    expect(mean(grades)).toBeLessThanOrEqual(6.9)
  })
})

describe('each sign asks all that it covers', () => {
  // what the catalogue of the trade says that each sign covers
  const covers = {
    'saddle-numbness': [
      /numb/,
      /tingling/,
      /odd feeling/,
      /between your legs/,
      /private/,
      /back passage/,
      /buttock/,
      /wipe/,
    ],
    'bladder-change': [/start/, /weak/, /cannot feel/, /cannot go/, /leak/],
    'bowel-change': [/control/, /cannot feel/],
    'sexual-change': [/feeling/, /function/],
    'both-legs': [/pain/, /numb/, /weakness/, /both legs/],
    'leg-weakness': [/drags/, /slaps/, /gives way/, /toes/, /heels/, /trips/, /cannot walk/],
    'chest-breath': [/chest pain/, /breath/, /blood/, /collapse/],
    'stroke-signs': [/face/, /arm/, /speech/, /sight/, /balance/, /sudden/],
    'tearing-pain': [/sudden/, /tears|rips/, /belly/, /chest/, /back/, /pulse/, /faint/],
    'major-injury': [/fall/, /crash/, /blow/, /since/],
    'fever-unwell': [/fever/, /chills/, /ill/],
    'calf-swelling': [/one calf/, /hot/, /swollen/, /red/],
    'new-numbness': [/numbness/, /pins and needles/, /spread/],
    'severe-unrelenting': [/no position/],
    'minor-injury-risk': [/fall/, /bones/, /steroids/],
    'night-pain': [/wakes/, /position/],
  } as const
  for (const [id, parts] of Object.entries(covers))
    it(id, () => {
      for (const part of parts) expect(SIGN_WORDS[id as keyof typeof covers].question).toMatch(part)
    })
})

describe('what to say there', () => {
  it('names possible cauda equina for the five signs, alone or among others', () => {
    const five = SIGN_IDS.filter(isCaudaEquina)
    expect(five).toHaveLength(5)
    for (const id of five) expect(sayThere(['fever-unwell', id])).toBe(SAY_CAUDA_EQUINA)
    expect(SAY_CAUDA_EQUINA).toContain('"possible cauda equina"')
  })

  it('does not for the rest', () => {
    for (const id of SIGN_IDS.filter((id) => !isCaudaEquina(id))) expect(sayThere([id])).not.toMatch(/cauda/)
  })
})
