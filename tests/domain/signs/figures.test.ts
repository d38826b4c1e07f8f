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

/** What a figure of a house, a joke or a denial swallows, and the sign that stands in nearly the same words. */
const PAIRS = [
  ['the chair has a weak leg, glue tonight', 'sitting at my desk with a weak leg'],
  ['the sofa’s arm is weak', 'sat in the chair arm is weak and tingly'],
  ['black out in the whole village', 'had a blackout in the street this morning'],
  ['lost power for two hours in the storm', 'lost power for two hours in my left leg'],
  ['the branch gave way in the storm', 'branch gave way under the weight and i came down with it'],
  ['the gazebo collapsed overnight', 'gazebo collapsed at the party onto my back'],
  ['out of puff blowing up 30 balloons', 'out of breath blowing my nose'],
  ['would rather die than do karaoke', 'i would rather die than do this another day'],
  ['od’d on chocolate', 'overdosed on chocolate and paracetamol'],
  ['from the bottom of my heart, thanks', 'had a big heart attack last night'],
  ['an absolute torture they sang all night', 'absolute torture they said 9 pain'],
  ['sad story about cancer on telly', 'my story with cancer started in may'],
  ['lost my voice and my keys', 'lost my voice and my balance'],
  ['lost sight of the ball', 'lost sight of the ball in one eye'],
  ['lost sight of the path', 'lost sight of the ball and then of everything'],
  ['lost the feeling that it’s all my fault', 'lost the feeling that i’m going for a wee'],
  ['lost feeling of time in that film', 'lost feeling of time and of my bum'],
  ['lost control of the ball', 'lost control of the ball of my foot'],
  ['weak at the knees when i saw her', 'going weak at the knees for days now'],
  ['buckled in the pushchair', 'knee buckled in the car seat'],
  ['tripped over my words, blushed', 'tripping over my words since this morning'],
  ['car crash telly on tonight', 'car crash interview with police, back is worse'],
  ['that book left me numb', 'long meeting left me numb in the saddle'],
  ['my brother is a numb nuts', 'got numb nuts after the ride'],
  ['he gave me a wet willy', 'my wet willy, it drips all day'],
  ['slept down below on the ferry', 'down below on the boat i am numb'],
  ['number two on the list is calf raises', 'did a number two in the bed'],
  ['the dog wee everywhere, new puppy', 'since having my baby wee everywhere when i laugh'],
  ['my car leaks oil', 'my car leaks and so do i'],
  ['the drums at the gig shook my chest', 'thunder in my chest'],
  ['got sunburn on both legs', 'both legs like sunburn'],
  ['couldn’t get to any of them', 'couldn’t get to any loo in time'],
  ['gave up on the last two drills', 'my leg gave up on the last step'],
  ['in my dream i fell off a cliff and woke up laughing', 'in my dream i peed and woke up wet'],
  ['i know when i need to go', 'how can i know when i need to go, i cant feel it'],
  ['not suicidal, 2 calf 3', 'never felt suicidal before today'],
  ['i don’t want to die, i want a sandwich', 'im not sure i dont want to die'],
  ['i couldn’t hurt myself, too soft', 'couldn’t kill myself the rope broke'],
  ['i would never hurt myself, i’ve got four dogs', 'there is no day i dont think of killing myself'],
  ['no it isn’t numb, 2 calf 3', 'no it isn’t numb it is dead'],
  ['no it’s not sore it’s just tired', 'no i’m not weak i’m paralysed'],
  ['temperature normal, took it at work', 'temperature back to normal after 40 yesterday'],
  ['google says everything is cancer, ignore it', 'they said everything’s cancer in there'],
] as const

describe('a figure and the sign beside it', () => {
  it.each(PAIRS)('let be: %s; is heard: %s', (harmless, meant) => {
    expect(screen(harmless, 'en').signs).toEqual([])
    expect(screen(meant, 'en').signs).not.toEqual([])
  })
})
