import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { renderMessage } from '../../src/chat/render.ts'
import type { Message } from '../../src/engine/message.ts'
import { textsFor } from '../../src/text/index.ts'
import { copyClient, refsOf } from './many.ts'
import { openPractice, type Practice } from './practice.ts'

const { coach, digestAgain, record } = textsFor('en')
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
})
afterEach(() => practice.close())

async function firstWeek(): Promise<void> {
  for (let n = 2; n <= 8; n++) {
    await practice.until(`2026-03-0${n}`, '08:30')
    if (n !== 4) await practice.say('heron', '2 calf 4, no signs')
  }
  await practice.until('2026-03-08', '18:01')
}
/** What a request has brought to the coach's channel. */
async function asked(options: Record<string, string>): Promise<{ answer: string; posted: Message[] }> {
  const before = practice.toCoach().length
  const answer = await practice.command('digest', options)
  return { answer: answer!.text, posted: practice.toCoach().slice(before) }
}
const cards = (posted: readonly Message[]): Message[] => posted.filter(({ kind }) => kind === 'digest')

describe('the digest on request', () => {
  it('of one client is one card and no roll-call', async () => {
    await practice.enrol('dipper')
    const { answer, posted } = await asked({ client: 'heron' })
    expect(answer).toBe(digestAgain.posted(digestAgain.ofClient(digestAgain.present, 'heron')))
    expect(posted).toHaveLength(1)
    expect(posted[0]).toMatchObject({ kind: 'digest', about: 'heron' })
    expect(posted[0]!.buttons.map(({ name }) => name)).toContain('hold')
  })

  it('of a week gone by tells of that week, with nothing left to decide', async () => {
    await firstWeek()
    const first = cards(practice.toCoach())[0]!
    await practice.until('2026-03-20', '09:00')
    const { answer, posted } = await asked({ week: '2026-W10' })
    expect(answer).toBe(digestAgain.posted(digestAgain.week('2026-W10')))
    expect(posted.map(({ kind }) => kind)).toEqual(['roll-call', 'digest'])
    const [card] = cards(posted)
    const [head, ...lines] = card!.text.split('\n')
    expect(head).toBe(digestAgain.again('2026-W10'))
    expect(first.text.startsWith(lines.join('\n'))).toBe(true)
    expect(card?.picture).toMatchObject({ name: first.picture!.name })
    expect(card?.buttons.map(({ name }) => name)).toEqual(['why', 'record'])
  })

  it('marks as revised what was changed or came in since it was posted, only there', async () => {
    await firstWeek()
    await practice.until('2026-03-09', '07:00')
    await practice.say('heron', 'Saturday 1 knee 3')
    const before = practice.toCoach().length
    await practice.until('2026-03-09', '12:00')
    expect(
      practice
        .toCoach()
        .slice(before)
        .some(({ text }) => text.includes('Revised')),
    ).toBe(false)
    const { posted } = await asked({ week: '2026-W10', client: 'heron' })
    expect(posted).toHaveLength(1)
    expect(posted[0]!.text.split('\n')[1]).toBe(
      '**Revised** since it was posted on Sun 8 Mar: Sat 7 Mar was 2 sessions, calf, pain 4, is 1 session, knee, pain 3',
    )
  })

  it('says what came in later beside what was changed', async () => {
    await practice.until('2026-03-08', '18:01')
    await practice.say('heron', 'yesterday 1 knee 3')
    const { posted } = await asked({ week: '2026-W10' })
    expect(cards(posted)[0]!.text).toContain('Sat 7 Mar came in later: 1 session, knee, pain 3')
  })

  it('of the present week is the digest as of now', async () => {
    await practice.until('2026-03-04', '09:00')
    const { posted } = await asked({ week: '2026-W10' })
    expect(cards(posted)[0]!.text).not.toContain('again')
    expect(cards(posted)[0]!.buttons.map(({ name }) => name)).toContain('hold')
  })

  it('refuses what is no week, is still to come, or was before anybody', async () => {
    for (const [options, text] of [
      [{ week: 'last' }, record.badWeek('last')],
      [{ week: '2026-W30' }, digestAgain.futureWeek('2026-W30')],
      [{ week: '2025-W30' }, digestAgain.nobody('2025-W30')],
      [{ client: 'osprey' }, coach.unknownClient('osprey', ['heron'])],
    ] as const)
      expect(await asked(options)).toEqual({ answer: text, posted: [] })
  })

  it('of 80 clients is a message a client after a roll-call, all within what the platform takes', async () => {
    await practice.until('2026-03-02', '08:30')
    await practice.say('heron', '2 calf 4, no signs')
    await copyClient(practice, 'heron', refsOf(79))
    await practice.until('2026-03-08', '18:30')
    const weekly = practice.toCoach().filter(({ kind }) => kind === 'digest' || kind === 'roll-call')
    expect(cards(weekly)).toHaveLength(80)
    expect(new Set(cards(weekly).map(({ about }) => about)).size).toBe(80)
    const first = weekly.findIndex(({ kind }) => kind === 'digest')
    expect(weekly.slice(first).every(({ kind }) => kind === 'digest')).toBe(true)
    for (const message of weekly) {
      const parts = renderMessage('x'.repeat(20), message)
      expect(parts).toHaveLength(1)
      expect(String(parts[0]!.body.content).length).toBeLessThanOrEqual(2_000)
    }
  })
})
