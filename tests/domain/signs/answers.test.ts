import { describe, expect, it } from 'vitest'
import { screen } from '../../../src/domain/signs/screen.ts'

describe('a no that answers, its comma left out', () => {
  it.each([
    ['en', 'no i cant pee', 'bladder-change'],
    ['en', "nope can't pee", 'bladder-change'],
    ['en', 'hi coach no i still cant pee', 'bladder-change'],
    ['en', 'no no feeling down there', 'saddle-numbness'],
    ['en', 'nope no control of my bladder', 'bladder-change'],
    ['en', "no can't feel when i wipe", 'saddle-numbness'],
    ['es', 'no no puedo orinar', 'bladder-change'],
    ['es', 'no ya no controlo el pis', 'bladder-change'],
    ['es', 'nop no puedo hacer pis', 'bladder-change'],
    ['es', 'no sigo sin poder orinar', 'bladder-change'],
    ['es', 'nop sigo con las piernas dormidas', 'both-legs'],
    ['es', 'no continúo sin sentir nada ahí abajo', 'saddle-numbness'],
    ['es', 'no no siento nada ahí abajo', 'saddle-numbness'],
  ] as const)('%s: %s', (locale, text, sign) => expect(screen(text, locale).signs).toContain(sign))

  it.each([
    ['en', 'no numbness down there'],
    ['en', 'nope no pins and needles between my legs'],
    ['en', 'no my bladder is fine'],
    ['en', 'no bladder trouble, no bowel trouble'],
    ['en', "it doesn't wake me"],
    ['es', 'no mi vejiga está bien'],
    ['es', 'no no tengo hormigueo ni debilidad'],
    ['es', 'no tengo problemas para orinar'],
    ['es', 'siento todo ahí abajo, orino bien'],
  ])('%s: %s denies', (locale, text) => expect(screen(text, locale).signs).toEqual([]))
})
