import { describe, expect, it } from 'vitest'
import type { SignId } from '../../../src/domain/signs/catalogue.ts'
import { screen } from '../../../src/domain/signs/screen.ts'

/** Somebody else writes for the client: their signs are the client's, and those of anybody else are not. */
const RAISED: Readonly<Record<string, [string, SignId][]>> = {
  en: [
    ['This is her husband typing, she collapsed', 'chest-breath'],
    ["This is Anna's husband. She collapsed in the kitchen", 'chest-breath'],
    ["Hi this is Anna's husband, she can't pee since this morning", 'bladder-change'],
    ["It's Mark, her brother. She has chest pain", 'chest-breath'],
    ["this is his wife writing. He can't move his foot", 'leg-weakness'],
    ["This is Tom's mum. He says he wants to die", 'self-harm'],
    ['wife here. he fell off the ladder and his back is much worse', 'major-injury'],
    ["Hello, his daughter here, dad's face has dropped on one side", 'stroke-signs'],
    ['Hi coach, her flatmate: she says she wants to die', 'self-harm'],
    ['Thanks for asking. This is Sam (her fiance). She has no control of her bladder', 'bladder-change'],
    ['on behalf of my husband: he has no feeling in his private parts', 'saddle-numbness'],
  ],
  es: [
    ['soy su marido, ella se desmayó', 'chest-breath'],
    ['Hola, soy el marido de Ana. No puede orinar desde esta mañana', 'bladder-change'],
    ['soy Pedro, su hijo. no siente la entrepierna', 'saddle-numbness'],
    ['habla su hermano, dice que quiere morirse', 'self-harm'],
    ['mi marido esta mal. no puede orinar', 'bladder-change'],
    ['soy la hija, mi madre se ha caído y le duele mucho más', 'major-injury'],
  ],
}

const ASKED: Readonly<Record<string, [string, SignId][]>> = {
  en: [
    ['she cant pee and is numb between her legs', 'bladder-change'],
    ['her legs are numb, both of them, since this morning', 'both-legs'],
    ['my partner collapsed and is pale, what should I do', 'chest-breath'],
  ],
  es: [
    ['no puede orinar y no siente la entrepierna', 'bladder-change'],
    ['ella no puede mear', 'bladder-change'],
  ],
}

const OTHERS: Readonly<Record<string, string[]>> = {
  en: [
    'My wife had this last year and she couldn’t pee',
    'my dad collapsed last year, he is fine now',
    'Grandad fell off the roof on Sunday, busy at the hospital, skipped',
    'my friend told me in the pub that he wet himself',
    'My dad did his exercises and then had chest pain',
    'she did both sessions, pain 3 calf',
    'it’s hard with kids, mate. 2 calf 4',
  ],
  es: ['mi padre no podía orinar, lo operaron', 'soy Juan, 2 sesiones, dolor 3'],
}

describe.each(['en', 'es'])('written for the client (%s)', (language) => {
  it.each(RAISED[language]!)('is raised: %s', (text, sign) => {
    const { signs, unsure } = screen(text, language)
    expect(signs).toContain(sign)
    expect(unsure).not.toContain(sign)
  })
  it.each(ASKED[language]!)('is asked about: %s', (text, sign) => {
    const { signs, denied } = screen(text, language)
    expect(signs).toContain(sign)
    expect(denied).not.toContain(sign)
  })
  it.each(OTHERS[language]!)('is let be: %s', (text) => expect(screen(text, language).signs).toEqual([]))

  it('quotes the very words that were written', () => {
    const text =
      language === 'en' ? 'Wife here. He lost control of his bladder' : 'soy su mujer. Él no puede orinar'
    for (const { words } of screen(text, language).evidence) expect(text).toContain(words)
  })
})
