import { describe, expect, it } from 'vitest'
import { readReply } from '../../../src/domain/reply/read.ts'
import type { Ask, Reading } from '../../../src/domain/reply/reading.ts'

/** A Wednesday; two sessions planned. */
const TODAY = '2026-03-04'
const read = (text: string, locale = 'en', asked: Ask | null = null): Reading =>
  readReply(text, { planned: 2, today: TODAY, promptDay: TODAY, locale, asked })
const values = ({ sessions, reach, pain }: Reading) => [sessions, reach, pain]

describe('words that only sound like a wish', () => {
  it.each([
    ['en', 'leave me a note'],
    ['en', "I'm leaving work now"],
    ['en', 'leaving for the airport'],
    ['en', 'I want to leave early tomorrow'],
    ['en', "I don't want to leave"],
    ['en', 'never said I want to quit'],
    ['en', "please don't delete my data"],
    ['en', "don't stop the messages, I like them"],
    ['en', 'take a break between sets'],
    ['en', 'I take a break after each set'],
    ['en', 'not on holiday'],
    ['en', "don't pause me"],
    ['en', "I'm back to square one"],
    ['en', "I don't need help"],
    ['en', 'resume is done, got the job'],
    ['es', 'no quiero dejarlo'],
    ['es', 'no quiero salir'],
    ['es', 'una pausa entre series'],
    ['es', 'hice un descanso de 1 minuto'],
    ['es', 'no necesito ayuda'],
  ])('%s: %s', (locale, text) => {
    expect(['leave', 'pause', 'resume', 'help']).not.toContain(read(text, locale).intent)
  })

  it.each([
    ['en', 'I want to leave', 'leave'],
    ['en', 'No, stop messaging me', 'leave'],
    ['en', 'im leaving', 'leave'],
    ['en', 'I do not want this any more. Stop messaging me', 'leave'],
    ['en', 'I need a break', 'pause'],
    ['en', 'need a break for a week', 'pause'],
    ['en', "I'm back, start again", 'resume'],
    ['en', 'I need help', 'help'],
    ['en', 'should I take a break between sets?', 'question'],
    ['en', 'can you help me with the glide?', 'question'],
    ['es', 'quiero dejarlo', 'leave'],
    ['es', 'no, quiero dejarlo', 'leave'],
    ['es', 'ya no quiero seguir', 'leave'],
    ['es', 'necesito un descanso', 'pause'],
    ['es', 'perdón, me equivoqué de chat', 'other'],
    ['es', 'luego te escribo, estoy en una reunión', 'other'],
    ['en', "I'm in a meeting", 'other'],
    ['en', "I'm in Lisbon till Friday", 'question'],
  ])('%s: %s is heard as %s', (locale, text, intent) => {
    expect(read(text, locale).intent).toBe(intent)
  })

  it.each([
    ['es', 'I want to leave', 'leave'],
    ['es', 'I need a break', 'pause'],
    ['es', 'help me please', 'help'],
    ['en', 'quiero dejarlo', 'leave'],
    ['en', 'necesito un descanso', 'pause'],
    ['en', 'ayuda', 'help'],
  ])('a plain wish in the other language (%s: %s)', (locale, text, intent) => {
    expect(read(text, locale).intent).toBe(intent)
  })
})

describe('several days in one message', () => {
  const days = (text: string, locale = 'en') => {
    const reading = read(text, locale)
    return [reading, ...reading.others].map(({ day, sessions, reach, pain }) => [day, sessions, reach, pain])
  }
  const [sunday, monday, tuesday] = ['2026-03-01', '2026-03-02', '2026-03-03']

  it.each([
    ['en', 'today and yesterday the same: 2 thigh 3', TODAY, tuesday],
    ['en', 'yesterday and today both 2 thigh 3', TODAY, tuesday],
    ['en', '2 thigh 3 yesterday and today', TODAY, tuesday],
    ['en', 'Monday & Tuesday: 2 thigh 3', tuesday, monday],
    ['en', 'mon/tue 2 thigh 3', tuesday, monday],
    ['es', 'ayer y hoy: 2 muslo 3', TODAY, tuesday],
    ['es', 'lunes y martes 2 muslo 3', tuesday, monday],
  ])('days named together share what is told (%s: %s)', (locale, text, late, early) => {
    expect(days(text, locale)).toEqual([
      [late, 2, 'thigh', 3],
      [early, 2, 'thigh', 3],
    ])
  })

  it('from one day to another means those between as well', () => {
    expect(days('from sunday to tuesday: 2 thigh 3').map(([day]) => day)).toEqual([tuesday, sunday, monday])
  })

  it('days with a report each are kept apart', () => {
    expect(days("didn't do any yesterday and today 2 calf 4")).toEqual([
      [TODAY, 2, 'calf', 4],
      [tuesday, 0, null, null],
    ])
    expect(days('worse yesterday and today 2 calf 4')).toEqual([[TODAY, 2, 'calf', 4]])
    expect(days('yesterday I was only able to do one. today 2 knee 3')).toEqual([
      [TODAY, 2, 'knee', 3],
      [tuesday, 1, null, null],
    ])
    expect(days('was in the foot yesterday, today only thigh, 2, pain 3')).toEqual([[TODAY, 2, 'thigh', 3]])
  })

  it('days of something else date no report', () => {
    expect(days('2 calf 4, race on saturday and sunday')).toEqual([[TODAY, 2, 'calf', 4]])
    expect(days('race on saturday and sunday, 2 calf 4')).toEqual([[TODAY, 2, 'calf', 4]])
  })

  it('a numbered reply may stand below its days', () => {
    expect(days('yesterday and today:\n1) 2\n2) calf\n3) 6')).toEqual([
      [TODAY, 2, 'calf', 6],
      [tuesday, 2, 'calf', 6],
    ])
  })

  it('a day too far back among others makes the day unsure', () => {
    const reading = read('Thursday 2 calf 5, Sunday 2 calf 4, today 1 knee 3')
    expect([reading.day, reading.unsure]).toEqual([TODAY, ['day']])
    expect(reading.others.map(({ day }) => day)).toEqual([null, sunday])
  })
})

describe('lists, labels and counts told twice', () => {
  it.each([
    ['en', '1) two 2) calf 3) five', 2, 'calf', 5],
    ['en', '1. 2\n2. calf\n3. 4', 2, 'calf', 4],
    ['en', '1. both 2. knee 3. four', 2, 'knee', 4],
    ['en', '1) two sessions 2) calf 3) 5 4) no signs', 2, 'calf', 5],
    ['en', '1: 2, 2: calf, 3: 4', 2, 'calf', 4],
    ['es', '1) dos 2) gemelo 3) cinco', 2, 'calf', 5],
    ['en', 'How many: 2. How far: shin. How bad: 5.', 2, 'calf', 5],
    ['en', 'how many sessions: 2. how bad: 4. how far: knee', 2, 'knee', 4],
    ['en', 'half done so 1, knee, 5', 1, 'knee', 5],
    ['en', 'all of them, so 2, thigh, 3', 2, 'thigh', 3],
    ['en', 'missed one so 1, knee, 4', 1, 'knee', 4],
    ['es', 'la mitad o sea una, rodilla, 5', 1, 'knee', 5],
    ['en', 'max 6 avg 3, calf, 2', 2, 'calf', 6],
    ['en', 'avg 3 max 6, 2 done, calf', 2, 'calf', 6],
    ['en', 'did both so 2, a 1 out of 10, reached the ankle', 2, 'foot', 1],
    ['en', 'pain four - 2 done - only the buttock', 2, 'buttock', 4],
    ['en', '0/10 - 2 done - felt it in my toes', 2, 'foot', 0],
    ['en', 'pain 4 and half done, calf', 1, 'calf', 4],
    ['en', 'missed one so 1 - a 0 out of 10 - my back', 1, 'back', 0],
  ])('%s: %s', (locale, text, ...told) => {
    expect(values(read(text, locale))).toEqual(told)
  })

  it('"1, 2" and the like stay numbers', () => {
    expect(values(read('1. calf 4'))).toEqual([1, 'calf', 4])
    expect(values(read('2 done, calf, 3'))).toEqual([2, 'calf', 3])
  })
})

describe('hours of the day', () => {
  it.each([
    ['first session at 7 this morning, second at 6pm, so that is two, ankle, about a 5', 2, 'foot', 5],
    ['did the first one at 6 in the morning and the other at 8 tonight, calf 3', 2, 'calf', 3],
    ['both done, one at 6 this morning, knee 3', 2, 'knee', 3],
    ['meetings 9 to 5, both, calf, 3', 2, 'calf', 3],
    ['work 8 to 4, both, calf, 3', 2, 'calf', 3],
    ['worked 8-5, both, knee, 3', 2, 'knee', 3],
    ['2 calf 4, I fly at 6', 2, 'calf', 4],
    ['pain 8, meetings 9 to 5, down to the hamstring, none done', 0, 'thigh', 8],
    ['pain 1 at 7 this morning, in my groin, did one at 7 this morning', 1, 'thigh', 1],
    ['pain at 7 this morning, 4 now, calf, both', 2, 'calf', 7],
    ['calf 6 to 4, both', 2, 'calf', 6],
  ])('%s', (text, ...told) => {
    expect(values(read(text))).toEqual(told)
  })
})

describe('said of something else', () => {
  it.each([
    'work was not great',
    'the traffic was terrible',
    'not great sleep',
    'bad weather',
    'more sleep needed',
    'less work this week',
  ])('%s tells no pain', (text) => {
    expect(read(text).unsure).not.toContain('pain')
  })

  it.each(['not great', 'the day was bad', 'thigh not great', 'it was terrible', 'worse', 'less pain'])(
    '%s is asked about',
    (text) => {
      expect(read(text).unsure).toContain('pain')
    },
  )

  it.each([
    ['en', '2 back 2. On the other foot, the weather is nice', 2, 'back', 2],
    ['en', 'footy practice today, did both after, hammy 2', 2, 'thigh', 2],
    ['en', 'stubbed my toe lol. both done, back, 2', 2, 'back', 2],
    ['en', 'heel blister, otherwise thigh 3, both', 2, 'thigh', 3],
    ['en', 'new shoes rubbed my heel but nerve wise only thigh, 2 done, 3', 2, 'thigh', 3],
    ['en', 'tooth pain 5, back 2, both', 2, 'back', 2],
    ['es', 'dolor de cabeza 5, espalda 2, las dos', 2, 'back', 2],
    ['es', 'me golpeé el pie con la cama, espalda 2, las dos', 2, 'back', 2],
    ['en', '10/10 session, calf 3, both', 2, 'calf', 3],
    ['en', 'moved up to the knee from the foot, both, 3', 2, 'knee', 3],
    ['en', 'gone from foot, still in calf, both, 4', 2, 'calf', 4],
    ['en', 'shifted from calf, both, 4', 2, 'calf', 4],
    ['es', 'pasó del gemelo al muslo, las dos, 3', 2, 'thigh', 3],
    ['es', 'ya salió del pie, está en la rodilla, las dos, 3', 2, 'knee', 3],
    ['es', 'subió del pie al gemelo, las dos, 3', 2, 'calf', 3],
    ['en', 'spread from the hip to the calf, both, 4', 2, 'calf', 4],
    ['en', 'half way down the thigh, both, 3', 2, 'thigh', 3],
    ['en', 'all bar one, calf 3', 1, 'calf', 3],
    ['en', 'everything except one, calf 3', 1, 'calf', 3],
    ['es', 'todas menos una, gemelo 3', 1, 'calf', 3],
    ['en', 'less than half, calf 3', null, 'calf', 3],
    ['en', 'nearly both, calf 3', null, 'calf', 3],
    ['es', 'casi las dos, gemelo 3', null, 'calf', 3],
    ['en', 'nuthin in the foot, calf 4, both', 2, 'calf', 4],
    ['en', "didn't do jack today, butt 3", 0, 'buttock', 3],
    ['en', "didn't find time for any, calf 3", 0, 'calf', 3],
    ['en', 'Today not make exercise, calf 5', 0, 'calf', 5],
    ['en', 'the left one again, calf, 4, did one', 1, 'calf', 4],
    ['es', 'en el pie ya nada, solo el muslo, 3, las dos', 2, 'thigh', 3],
    ['es', 'en el pie nada de nada, gemelo 3, las dos', 2, 'calf', 3],
    ['es', 'pierna no, las dos, espalda 2', 2, 'back', 2],
    ['es', 'nº de sesiones 2, muslo, dolor 3', 2, 'thigh', 3],
    ['es', 'nada mal, una, espalda, 3', 1, 'back', 3],
    ['es', 'me olvidé de escribir, las dos, muslo 3', 2, 'thigh', 3],
    ['es', 'una sesión no pude más muslo y nalga el dolor un 5', 1, 'thigh', 5],
    ['es', 'dos sesiones, rodilla, número 4', 2, 'knee', 4],
    ['es', 'eh hice una eh sesión y me llega a la rodilla y un cuatro', 1, 'knee', 4],
    ['es', 'dejé de ir en coche, las dos, muslo 4', 2, 'thigh', 4],
  ])('%s: %s', (locale, text, ...told) => {
    expect(values(read(text, locale))).toEqual(told)
  })

  it('a day on which somebody forgot to write is the day told', () => {
    const reading = read('se me olvidó escribir ayer: una, muslo, 4', 'es')
    expect([reading.day, ...values(reading)]).toEqual(['2026-03-03', 1, 'thigh', 4])
  })
})

describe('sides', () => {
  it.each([
    'both legs fine, back 2, 2 done',
    'no pain in both legs, back 2, 2 done',
    'both calves ok now, thigh 2, 2 done',
  ])('%s: no side is told', (text) => {
    expect(read(text).side).toBeNull()
  })

  it.each(['both calves 4, 2 done', 'both legs, calf 4, 2 done', 'both legs are bad'])('%s: both', (text) => {
    expect(read(text).side).toBe('both')
  })
})

describe('answers', () => {
  it('"not yet" answers whether it is easy by now', () => {
    expect(read('not yet', 'en', 'comfort').answer).toBe('no')
    expect(read('todavía no', 'es', 'comfort').answer).toBe('no')
  })

  it('"the usual two", asked for sessions, asks nothing more back', () => {
    expect(read('the usual two', 'en', 'sessions')).toMatchObject({ sessions: 2, unsure: [] })
  })
})
