import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { draw, drawFile } from '../../src/drawing.ts'
import type { DrawnReport } from '../../src/engine/coach/report.ts'
import type { Drawn, Message } from '../../src/engine/message.ts'
import { textsFor } from '../../src/text/index.ts'
import { readPdf } from '../picture/pdf-text.ts'
import { COACH, openPractice, type Practice, person } from './practice.ts'

const { report, access } = textsFor('en')
let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
  await practice.enrol('heron')
})
afterEach(() => practice.close())

const reports = (): Message[] => practice.toCoach().filter(({ kind }) => kind === 'report')
const factsIn = ({ picture }: Message): DrawnReport['facts'] => (picture!.facts as DrawnReport).facts

async function days(first: number, last: number, words: string): Promise<void> {
  for (let n = first; n <= last; n++) {
    await practice.until(`2026-03-${String(n).padStart(2, '0')}`, '08:30')
    await practice.say('heron', words)
  }
}

describe('the report for a clinician', () => {
  it('goes to the coach’s channel, as picture and as PDF', async () => {
    await days(2, 4, '2 calf 4, no signs')
    const answer = await practice.command('report', { client: 'heron' })
    expect(answer?.text).toBe(report.posted)
    const [message, ...more] = reports()
    expect(more).toEqual([])
    expect(message).toMatchObject({
      about: 'heron',
      address: { to: 'coach' },
      picture: { name: 'report-heron-2026-03-04', draw: 'report' },
      files: [{ name: 'report-heron-2026-03-04.pdf', draw: 'report' }],
    })
    expect(message!.picture!.alt).toContain('not a diagnosis')
    expect(message!.text).toContain('only where heron agrees')
    const { png } = await draw(message!.picture!)
    expect(Buffer.from(png).subarray(1, 4).toString()).toBe('PNG')
    const pdf = readPdf(await drawFile(message!.files[0] as Drawn))
    expect(pdf.pages).toBe(1)
    expect(pdf.text).toContain('3 of 3 days; none filled in later')
  })

  it('tells of a sign with the words used, and of who cleared it', async () => {
    await practice.until('2026-03-05', '09:00')
    await practice.say('heron', 'I cannot pee since this morning')
    await practice.until('2026-03-07', '12:00')
    await practice.command('clear', { client: 'heron', by: 'emergency physician', on: '2026-03-06' })
    await practice.command('report', { client: 'heron' })
    const facts = factsIn(reports()[0]!)
    expect(facts.signs).toMatchObject([
      {
        sign: 'bladder-change',
        care: 'emergency',
        day: '2026-03-05',
        words: 'I cannot pee since this morning',
        state: 'cleared',
        ended: '2026-03-07',
        by: 'emergency physician, 2026-03-06',
      },
    ])
    expect(facts.events).toMatchObject([
      { kind: 'stop', why: 'lock', day: '2026-03-05', until: '2026-03-07' },
    ])
  })

  it('keeps the client’s own words of a sign out of the channel where the practice wishes so', async () => {
    await practice.command('set-up', { quote: false }, COACH)
    await practice.until('2026-03-03', '09:00')
    await practice.say('heron', 'I cannot pee since this morning')
    await practice.command('report', { client: 'heron' })
    expect(JSON.stringify(reports())).not.toContain('since this morning')
    expect(factsIn(reports()[0]!).signs).toMatchObject([{ sign: 'bladder-change', words: null }])
  })

  it('is offered to whoever refers somebody, and the message stays as it is', async () => {
    const answer = await practice.command('decide', { client: 'heron', do: 'refer', reason: 'no change' })
    expect(answer?.choices?.buttons.map(({ name }) => name)).toEqual(['report', 'why', 'record'])
    const pressed = await practice.answerPress(answer, 'report')
    expect(pressed).toMatchObject({ text: report.posted, privately: true })
    expect(factsIn(reports()[0]!).events).toMatchObject([
      { kind: 'decision', decision: 'refer', reason: 'no change' },
    ])
  })

  it('goes back to the first day of a long course', async () => {
    await practice.until('2026-03-02', '09:00')
    await practice.say('heron', '1 foot 9, any position eases it, no signs')
    // 130 days later a client's file no longer holds that day
    practice.away('2026-07-10', '09:00')
    await practice.say('heron', '2 back 1, no signs')
    await practice.command('report', { client: 'heron' })
    const facts = factsIn(reports()[0]!)
    expect(facts.weeks).toHaveLength(19)
    expect(facts.weeks[0]).toMatchObject({ first: '2026-03-02', replies: { answered: 1 } })
  })

  it('ends four weeks after the last reply, and names no lift where none is wanted', async () => {
    await practice.enrol('wren', {}, { lift: '' })
    await practice.until('2026-03-02', '09:00')
    await practice.say('wren', '1 foot 9, any position eases it, no signs')
    await practice.until('2026-05-20', '09:00')
    await practice.command('report', { client: 'wren' })
    const { on, made, told, weeks } = factsIn(reports()[0]!)
    expect([on, made, told.lift]).toEqual(['2026-03-30', '2026-05-20', null])
    expect(weeks[0]).toMatchObject({ first: '2026-03-02', replies: { answered: 1 } })
  })

  it('is for the coach alone', async () => {
    const answer = await practice.command(
      'report',
      { client: 'heron' },
      { ...person('wren'), guild: 'guild-1' },
    )
    expect(answer?.text).toBe(access.onlyCoach)
    expect(reports()).toEqual([])
  })
})
