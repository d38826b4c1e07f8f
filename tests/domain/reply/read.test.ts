import { describe, expect, it } from 'vitest'
import { readReply } from '../../../src/domain/reply/read.ts'
import type { ReadingContext } from '../../../src/domain/reply/reading.ts'

const context: ReadingContext = {
  planned: 2,
  today: '2026-03-04',
  promptDay: '2026-03-04',
  locale: 'en',
  asked: null,
}

describe('the day of a reply', () => {
  it('after midnight, "today" is still the day of the prompt and "yesterday" the one before where both stand', () => {
    const late = { ...context, today: '2026-03-05' }
    expect(readReply('2 calf 4', late).day).toBe('2026-03-04')
    expect(readReply('today 2 calf 4', late).day).toBe('2026-03-04')
    expect(readReply('yesterday 2 calf 4', late).day).toBe('2026-03-04')
    const both = readReply('yesterday 2 calf 5, today 2 calf 4', late)
    expect([both.day, both.others[0]?.day]).toEqual(['2026-03-04', '2026-03-03'])
  })
})

describe('evidence', () => {
  it('quotes the very words behind each slot', () => {
    expect(readReply('𝟐 sessions, my 𝐂𝐀𝐋𝐅, pain ④', context).evidence).toEqual([
      { slot: 'sessions', words: '𝟐' },
      { slot: 'pain', words: '④' },
      { slot: 'reach', words: '𝐂𝐀𝐋𝐅' },
    ])
  })
})

describe('words that look like ours', () => {
  it.each([
    'half',
    'black',
    'sex',
    'numb',
    'high',
    'for',
    'to',
    'ate',
    'thing',
    'call',
    'need',
    'bath',
    'skin',
  ])('%s is not bent', (word) => {
    const { reach, sessions, pain } = readReply(`my ${word} today`, context)
    expect([reach, word === 'half' ? null : sessions, pain]).toEqual([null, null, null])
  })
})
