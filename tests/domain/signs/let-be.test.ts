import { describe, expect, it } from 'vitest'
import { screen } from '../../../src/domain/signs/screen.ts'

/** Kinds of talk that hold a sign's words and tell none, each beside what it must not swallow. */
describe('what is let be', () => {
  it.each([
    ['en', "don't feel numbness or weakness"],
    ['en', "didn't notice tingling, numbness or swelling"],
    ['en', 'no longer wakes me at night'],
    ['en', 'calf no longer swollen'],
    ['en', 'was incontinent after my c section but thats 6 years ago'],
    ['en', 'read online about foot drop'],
    ['en', 'saw a video about bladder trouble'],
    ['en', 'what would i do if i couldnt pee?'],
    ['en', 'when should i be worried about my bladder'],
    ['en', "can't talk here, I'm at work"],
    ['en', 'no control over my schedule this week'],
    ['en', 'willpower is weak, did one'],
    ['en', 'pain 9 last week, today 3'],
    ['en', "it's the left leg today"],
    ['en', 'the sore leg is the right one'],
    ['en', 'today it is more in the right leg'],
    ['en', 'can lift my toes, can walk on heels'],
    ['en', 'leg feels strong today'],
    ['es', 'no noto hormigueo ni debilidad en la pierna'],
    ['es', 'no noto fiebre ni escalofríos'],
    ['es', 'no siento nada raro ahí abajo'],
    ['es', 'no he notado problemas al orinar ni debilidad'],
    ['es', 'ya no me despierta por la noche'],
  ])('%s: %s', (locale, text) => expect(screen(text, locale).signs).toEqual([]))

  it.each([
    ['en', "don't feel pain between my legs, can't feel anything there", 'saddle-numbness'],
    ['en', "don't feel my numb bum any more", 'saddle-numbness'],
    ['en', "don't feel the leaks", 'bladder-change'],
    ['en', 'no longer numb between my legs', 'saddle-numbness'],
    ['en', "can't pee but that's new", 'bladder-change'],
    ['en', 'numb between my legs but that was an hour ago', 'saddle-numbness'],
    ['en', 'no control', 'bladder-change'],
    ['en', "can't talk properly", 'stroke-signs'],
    ['en', 'foot numb since today and it drops when i walk', 'leg-weakness'],
    ['en', "had a chest pain, can't talk here", 'chest-breath'],
    ['en', 'pain 9 last week, pain is 9 today', 'severe-unrelenting'],
    ['es', 'no noto el pie, ni fiebre ni nada', 'new-numbness'],
    ['es', 'no siento nada ahí abajo', 'saddle-numbness'],
    ['es', 'ya no siento cuando orino', 'bladder-change'],
    ['es', 'ya no controlo el pis', 'bladder-change'],
    ['es', 'el dolor es un 10', 'severe-unrelenting'],
  ] as const)('%s: but %s', (locale, text, sign) => expect(screen(text, locale).signs).toContain(sign))
})
