import { readFileSync } from 'node:fs'
import { beforeAll, describe, expect, it } from 'vitest'
import type { PlayResult } from '../../../src/rehearsal/player/index.ts'
import { isShort, LEFT_OUT } from '../../long.ts'
import { playText, toClient } from './playing.ts'

// Instants by hand from the time-zone database (2026): New York UTC-5, from 8 March 07:00Z to 1 November 06:00Z
// UTC-4; Lisbon UTC+0, from 29 March 01:00Z to 25 October 01:00Z UTC+1; Lord Howe UTC+11, from 4 April 15:00Z to
// 3 October 15:30Z UTC+10:30; Kolkata UTC+5:30.
const SPRING: [ref: string, day: string, at: string, local: string][] = [
  ['heron', '2026-03-07', '2026-03-07T07:30:00.000Z', '02:30'],
  ['heron', '2026-03-08', '2026-03-08T07:00:00.000Z', '03:00'],
  ['heron', '2026-03-09', '2026-03-09T06:30:00.000Z', '02:30'],
  ['dipper', '2026-03-28', '2026-03-28T01:15:00.000Z', '01:15'],
  ['dipper', '2026-03-29', '2026-03-29T01:00:00.000Z', '02:00'],
  ['dipper', '2026-03-30', '2026-03-30T00:15:00.000Z', '01:15'],
  ['curlew', '2026-04-04', '2026-04-03T14:45:00.000Z', '01:45'],
  ['curlew', '2026-04-05', '2026-04-04T14:45:00.000Z', '01:45'],
  ['curlew', '2026-04-06', '2026-04-05T15:15:00.000Z', '01:45'],
  ['plover', '2026-03-29', '2026-03-29T02:30:00.000Z', '08:00'],
]
const AUTUMN: typeof SPRING = [
  ['curlew', '2026-10-03', '2026-10-02T15:45:00.000Z', '02:15'],
  ['curlew', '2026-10-04', '2026-10-03T15:30:00.000Z', '02:30'],
  ['curlew', '2026-10-05', '2026-10-04T15:15:00.000Z', '02:15'],
  ['dipper', '2026-10-24', '2026-10-24T00:20:00.000Z', '01:20'],
  ['dipper', '2026-10-25', '2026-10-25T00:20:00.000Z', '01:20'],
  ['dipper', '2026-10-26', '2026-10-26T01:20:00.000Z', '01:20'],
  ['heron', '2026-10-31', '2026-10-31T05:30:00.000Z', '01:30'],
  ['heron', '2026-11-01', '2026-11-01T05:30:00.000Z', '01:30'],
  ['heron', '2026-11-02', '2026-11-02T06:30:00.000Z', '01:30'],
]

// autumn's instants are tried through the engine as well, in tests/outside/clock-changes.test.ts
const isLeftOut = (file: string): boolean => isShort && file.includes('autumn')

describe.each([
  ['four-zones-spring.yaml', SPRING, 32],
  ['four-zones-autumn.yaml', AUTUMN, 33],
] as const)('%s', (file, cases, days) => {
  if (isLeftOut(file)) return void it.skip(`plays${LEFT_OUT}`, () => {})
  let play: PlayResult
  beforeAll(async () => {
    // through the chat client, so that its requests are held against the platform's schemas here too
    play = await playText(readFileSync(`scenarios/${file}`, 'utf8'), 'chat')
  }, 180_000)

  it('meets what it expects', () => expect(play.checks.failed).toEqual([]))

  it.each(cases)('%s is prompted on %s at %s, %s by their own clock', (ref, day, at, local) => {
    const prompts = toClient(play, ref, 'prompt').filter((message) => message.day === day)
    expect(prompts.map((message) => [message.at, message.local])).toEqual([[at, `${day}T${local}`]])
  })

  it('gives everybody one prompt a local day', () => {
    for (const ref of ['heron', 'dipper', 'curlew', 'plover']) {
      const dates = toClient(play, ref, 'prompt').map((message) => message.day)
      expect(dates).toHaveLength(days)
      expect(new Set(dates).size).toBe(days)
    }
  })
})
