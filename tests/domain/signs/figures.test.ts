import { describe, expect, it } from 'vitest'
import { screen } from '../../../src/domain/signs/screen.ts'

/** What sounds like a figure of speech, and is meant; and what is taken every day and means nothing. */
const MEANT = {
  en: [
    'I collapsed in front of the mirror and can’t get up',
    'saw a film about suicide and I want to do the same tonight',
    'want to disappear into the woods and not come back',
    'i’ll kill my kids and then myself',
    'feet slap the floor when I walk',
    'temperature too high 39.5',
    'tickled both feet and felt nothing',
    'I can’t find the words to say things, sudden',
    'cant pee because the loo was shut, and still cant at home',
    'i want to die and im not kidding',
    'totally messing myself, no control',
    'i trip with my left foot',
    'puffed after three steps',
    'chest sore from nothing, tight',
    '2 groin 4 feel nothing',
  ],
  es: [
    'me cago en clase sin poder aguantar',
    'la cague en la cama',
    'quiero morirme de pena',
    'me rei tanto que no podia respirar y tengo los labios azules',
    'tengo flojera en la pierna derecha',
    'me he levantado con el pie izquierdo caido',
    'cuando tenia 10 minutos me mee encima sin sentir',
    'quiero morir de verdad, no es broma',
    'perdi cinco kilos porque voy al baño todo el dia',
    '2 ingle 4 no siento nada',
  ],
}

const EVERYDAY = {
  en: [
    'took 10 tablets in 5 days, as prescribed',
    'taken all meds',
    'i’ve decided it’s time for a new mattress',
    'goodbye and thanks for the drills, see you tomorrow',
    'peed off with the weather, 2 calf 3',
    'the printer collapsed and i laughed. 1 calf 4',
  ],
  es: [
    'me tome todo el zumo',
    'tome todas mis pastillas hoy, 2 gemelo 3',
    'me gustaria colgar el telefono',
    'abri el gas para cocinar',
    'me pincho con agujas de insulina',
    'pienso en irme de vacaciones',
  ],
}

describe.each(['en', 'es'] as const)('figures of speech (%s)', (language) => {
  it.each(MEANT[language])('is heard: %s', (text) => expect(screen(text, language).signs).not.toEqual([]))
  it.each(EVERYDAY[language])('is let be: %s', (text) => expect(screen(text, language).signs).toEqual([]))
})
