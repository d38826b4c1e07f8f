import { describe, expect, it } from 'vitest'
import { screen } from '../../../src/domain/signs/screen.ts'

/** Everyday talk that holds a sign's words, each kind beside what it must not swallow. */
describe('everyday talk', () => {
  it.each([
    ['en', 'i collapsed laughing'],
    ['en', 'ran out of breath laughing at the video'],
    ['en', 'lost sight of my goals a bit'],
    ['en', 'lost the will to do burpees'],
    ['en', 'shivering on the pontoon, dry now and warm'],
    ['en', 'can lift the leg, can bend the knee, can point the foot'],
    ['en', 'bladder? fine. bowels? fine. legs? fine'],
    ['en', 'bladder scan was normal in january'],
    ['en', 'my privates are none of your business haha'],
    ['es', 'mañana no puedo, tengo boda'],
    ['es', 'me caí de la risa'],
    ['es', '¿se hace con ambas piernas o solo con la mala?'],
    ['es', 'ya no tengo adormecimiento desde febrero'],
  ])('%s: %s', (locale, text) => expect(screen(text, locale).signs).toEqual([]))

  it.each([
    ['en', 'i collapsed in the kitchen', 'chest-breath'],
    ['en', 'ran out of breath on the stairs, never before', 'chest-breath'],
    ['en', 'lost sight in my left eye', 'stroke-signs'],
    ['en', 'lost the will to live', 'self-harm'],
    ['en', 'shivering in bed all night', 'fever-unwell'],
    ['en', 'can lift my left foot but cant lift my right', 'leg-weakness'],
    ['en', 'can lift my foot but only just', 'leg-weakness'],
    ['en', 'can move my toes but they feel dead', 'new-numbness'],
    ['en', 'bladder? fine until today', 'bladder-change'],
    ['en', 'bladder? not fine', 'bladder-change'],
    ['en', 'numb down there? yes', 'saddle-numbness'],
    ['en', 'if i cant pee by tonight what do i do', 'bladder-change'],
    ['en', 'the feeling in my foot went in february and hasnt come back', 'new-numbness'],
    ['en', 'my foot fell asleep on tuesday and still is', 'new-numbness'],
    ['en', "it's constant, sitting standing lying doesn't matter", 'severe-unrelenting'],
    ['es', 'se me torció la boca', 'stroke-signs'],
    ['es', 'si no puedo orinar qué hago', 'bladder-change'],
    ['es', 'me caí de la escalera y estoy peor', 'major-injury'],
    ['es', 'ambas piernas dormidas, cuánto tiempo espero', 'both-legs'],
    ['es', 'ya no tengo fuerza en el pie', 'leg-weakness'],
    ['es', 'la ropa me queda enorme y como igual', 'weight-loss'],
  ] as const)('%s: but %s', (locale, text, sign) => expect(screen(text, locale).signs).toContain(sign))
})
