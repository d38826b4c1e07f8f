import { describe, expect, it } from 'vitest'
import { readReply } from '../../../src/domain/reply/read.ts'

const read = (text: string, locale = 'en') => {
  const { sessions, reach, pain } = readReply(text, {
    planned: 2,
    today: '2026-03-04',
    promptDay: '2026-03-04',
    locale,
    asked: null,
  })
  return [sessions, reach, pain]
}

describe('sessions told without their number', () => {
  it.each([
    ['8am and 6pm done, calf 5', 2, 'calf', 5],
    ['morning and evening both done, calf 4', 2, 'calf', 4],
    ['only the am session, buttock 2', 1, 'buttock', 2],
    ['morning done, no evening, calf 4', 1, 'calf', 4],
    ['2 times, calf, 4', 2, 'calf', 4],
    ['two times today. calf. 4', 2, 'calf', 4],
    ['✅✅ calf 4', 2, 'calf', 4],
    ['✔️❌ calf 4', 1, 'calf', 4],
  ])('%s', (text, ...told) => expect(read(text)).toEqual(told))

  it.each([
    ['una a las 9 y otra a las 5, pantorrilla 4', 2, 'calf', 4],
    ['una a las 9 y la otra a las 17, pantorrilla 4', 2, 'calf', 4],
  ])('es: %s', (text, ...told) => expect(read(text, 'es')).toEqual(told))

  it.each([
    ['✅ calf 4', null, 'calf', 4],
    ['woke 2 times, both done, calf 4', 2, 'calf', 4],
    ['calf 4 in the morning and evening', null, 'calf', 4],
  ])('but %s', (text, ...told) => expect(read(text)).toEqual(told))
})

describe('names and their numbers', () => {
  it('go together as the signs between them say', () => {
    expect(read('knee:5 sessions:2')).toEqual([2, 'knee', 5])
    expect(read('rodilla: 5 sesiones: 2', 'es')).toEqual([2, 'knee', 5])
  })
  it('a zone passed on the way to another is no end', () => {
    expect(read('past the bum into the thigh, 3, both done')).toEqual([2, 'thigh', 3])
    expect(read('past the knee, thigh too, 3, both done')).toEqual([2, null, 3])
  })
  it('dictation: a number that sounds like a small word', () =>
    expect(read('2 calf for')).toEqual([2, 'calf', 4]))
})
