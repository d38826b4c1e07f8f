import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { addDays } from '../../src/domain/day.ts'
import { DRILLS, STOP_RULE } from '../../src/text/en/drills.ts'
import { textsFor } from '../../src/text/index.ts'
import { openPractice, type Practice } from './practice.ts'

const { client } = textsFor('en')
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const last = () => practice.to('heron').at(-1)!
const decide = (more: Record<string, string>) =>
  practice.command('decide', { client: 'heron', ladder: 'extension', ...more })

/** How a drill is done, what to mind and when to stop. */
function expectInFull(id: string): void {
  const { name, how, cautions, stopIf } = DRILLS[id]!
  for (const part of [name, how, cautions, stopIf, STOP_RULE]) expect(last().text).toContain(part)
  expect(last()).toMatchObject({ kind: 'decision', drills: [id] })
  expect(last().text.length).toBeLessThan(1500)
}

describe('a step that changes', () => {
  it('is told with how the new drill is done, up and down', async () => {
    await practice.enrol('heron')
    await practice.until('2026-03-03', '12:00')
    await decide({ do: 'advance' })
    await practice.wait(1)
    expectInFull('extension:2')
    await practice.until('2026-03-05', '12:00')
    await decide({ do: 'ease-back' })
    await practice.wait(1)
    expectInFull('extension:1')
  })

  it('is told in full where the rules ease it', async () => {
    await practice.enrol('heron', {}, {}, 'glide:2')
    for (let n = 0; n < 14; n++) {
      await practice.until(addDays('2026-03-02', n), '08:30')
      await practice.say('heron', n < 10 ? '2 back 3, no signs' : '2 foot 3, no signs')
    }
    const eased = practice
      .to('heron')
      .find((message) => message.drills.includes('glide:1') && message.kind === 'decision')
    expect(eased?.text).toContain(DRILLS['glide:1']!.how)
    expect(eased?.text).toContain(STOP_RULE)
  })

  it('names no exercise of a ladder that rests', async () => {
    await practice.enrol('heron', {}, {}, 'extension:2')
    await practice.until('2026-03-03', '12:00')
    const file = await practice.file('heron')
    await practice.store.store.transaction((tx) =>
      tx.apply({
        changes: [
          {
            put: 'hold',
            row: {
              id: 'rest-1',
              clientId: file.client.id,
              kind: 'rest',
              ladder: 'extension',
              reason: 'reach-spread',
              by: 'rules',
              at: new Date(),
              day: '2026-03-03',
              endedAt: null,
              endedBy: null,
            },
          },
        ],
        postings: [],
      }),
    )
    await decide({ do: 'ease-back' })
    await practice.wait(1)
    expect(last()).toMatchObject({ text: client.easedAtRest('extension'), drills: [] })
  })
})
