import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addDays } from '../../src/domain/day.ts'
import { EXPORT_FORMAT } from '../../src/domain/export/facts.ts'
import { historyKnownOn, readDiary } from '../../src/domain/history-csv/history.ts'
import { assess } from '../../src/domain/rules/assess.ts'
import { historyOf } from '../../src/engine/history.ts'
import type { Message, Written } from '../../src/engine/message.ts'
import { textsFor } from '../../src/text/index.ts'
import { readBundle } from '../fhir.ts'
import { COACH, openPractice, type Practice, person } from './practice.ts'

const { access, ownData, ownDataForCoach } = textsFor('en')
const START = '2026-03-02'
let practice: Practice

/** Five weeks with most of what a record can hold. */
beforeAll(async () => {
  practice = await openPractice(START)
  await practice.enrol('heron')
  await practice.enrol('dipper')
  for (let n = 0; n < 35; n++) {
    const day = addDays(START, n)
    await practice.until(day, '08:30')
    if (n === 9) await practice.say('heron', 'I cannot pee since this morning')
    else if (n === 20 || n === 21) continue
    else if (n === 22) await practice.say('heron', 'yesterday 1 knee 3')
    else await practice.say('heron', `2 ${n < 12 ? 'calf' : 'knee'} ${n < 12 ? 5 : 3}, no signs`)
    if (n === 11) await practice.command('clear', { client: 'heron', by: 'emergency physician', on: day })
    if (n === 14) await practice.command('note', { client: 'heron', text: 'hidden-note about the oar' })
    if (n === 15) await practice.say('heron', 'may I row on Sunday?')
    if (n === 16) await practice.command('answer', { client: 'heron', text: 'Yes, gently.' })
    if (n === 18)
      await practice.command('decide', { client: 'heron', do: 'hold', ladder: 'extension', reason: 'wait' })
    if (n === 24)
      await practice.command('plan', { client: 'heron', sessions: 3, ladders: 'extension:2', anyway: true })
  }
}, 60_000)
afterAll(() => practice.close())

const LAST = addDays(START, 34)
const fileOf = (message: Message | undefined): Written => message!.files[0] as Written
const report = (messages: readonly Message[]): Message | undefined =>
  messages.findLast(({ kind }) => kind === 'report')

async function mine(format?: string): Promise<{ message: Message; file: Written }> {
  const answer = await practice.command('my-data', format ? { format } : {}, 'heron')
  expect(answer).toMatchObject({ text: ownData.onItsWay, files: [] })
  await practice.wait(1)
  const message = report(practice.to('heron'))!
  return { message, file: fileOf(message) }
}

describe('a client’s own data in the chat', () => {
  it('comes in private as one JSON file with all that is kept, the coach’s notes left out and said so', async () => {
    const { message, file } = await mine()
    expect(message).toMatchObject({ address: { to: 'client', user: 'user-heron' }, text: ownData.sent.json })
    expect(message.text).toContain('own notes are not in it')
    expect(file.name).toBe(`heron-${LAST}.json`)
    const data = JSON.parse(file.text)
    expect(data).toMatchObject({
      format: EXPORT_FORMAT,
      leftOut: ['notes'],
      client: { alias: 'heron', user: 'user-heron', status: 'active' },
      baseline: { reach: 'calf', pain: 6 },
    })
    expect(data.consents).toMatchObject([{ answer: 'yes' }])
    expect(data.plans.map(({ sessions }: { sessions: number }) => sessions)).toEqual([2, 3])
    expect(data.signs).toMatchObject([
      { sign: 'bladder-change', state: 'cleared', words: 'I cannot pee since this morning' },
    ])
    expect(data.decisions.map(({ decision, by }: Record<string, string>) => [decision, by])).toContainEqual([
      'hold',
      'coach',
    ])
    expect(data.questions).toMatchObject([{ words: 'may I row on Sunday?', answer: 'Yes, gently.' }])
    const late = data.checkIns.find(({ day }: { day: string }) => day === addDays(START, 21))
    expect(late).toMatchObject({ filled: addDays(START, 22), versions: [{ words: 'yesterday 1 knee 3' }] })
    expect(data.holds.length).toBeGreaterThan(0)
    expect(data.alerts).toHaveLength(1)
    expect(data.messages.length).toBeGreaterThan(30)
    expect(file.text).not.toContain('hidden-note')
    expect(file.text).not.toContain('dipper')
    // who the coach is on the platform is not the client's data
    expect(file.text).not.toContain('<@coach-1>')
  })

  it('as CSV is assessed as the live record is', async () => {
    const { file } = await mine('csv')
    const diary = readDiary(file.text)
    expect(diary.problems).toEqual([])
    const whole = await practice.store.store.transaction(async (tx) => {
      const found = await tx.clientByRef('guild-1', 'heron')
      return (await tx.wholeClient(found!.client.id))!
    })
    for (const on of [LAST, addDays(START, 20), addDays(START, 10)]) {
      const live = historyOf(whole)
      expect(assess(historyKnownOn(diary)(LAST), on)).toEqual(assess(live, on))
    }
    expect(file.text).toContain('yesterday 1 knee 3')
  })

  it('as FHIR R4 is valid by the published schema, every resource of it', async () => {
    const { file } = await mine('fhir')
    expect(file.name).toBe(`heron-${LAST}.fhir.json`)
    const { errors, types } = readBundle(file.text)
    expect(errors).toEqual([])
    expect(types).toEqual({ Patient: 1, CarePlan: 2, QuestionnaireResponse: 33, Observation: 96 })
  }, 60_000)

  it('leaves no second copy behind once it has gone', async () => {
    await mine('csv')
    const kept = await practice.store.store.transaction(async (tx) => {
      const found = await tx.clientByRef('guild-1', 'heron')
      return (await tx.kept(found!.client.id)).outbox.flatMap(({ body }) => body.files)
    })
    expect(kept.length).toBeGreaterThan(0)
    expect(kept.map((file) => (file as Written).text)).toEqual(kept.map(() => ''))
  })

  it('would not be valid with a wrong status or a reference that leads nowhere', async () => {
    const { file } = await mine('fhir')
    const wrong = file.text.replace('"final"', '"done"').replace('"Patient/heron"', '"Patient/wren"')
    expect(readBundle(wrong).errors.length).toBeGreaterThan(1)
  }, 60_000)

  it('is a button under the record, which is shown by command or asked for in words', async () => {
    const answer = await practice.command('my-record', {}, 'heron')
    expect(answer?.text).toContain(ownData.how)
    expect(answer?.choices?.buttons.map(({ name }) => name)).toEqual(['my-data'])
    const files = () => practice.to('heron').filter((message) => message.files.length > 0).length
    const before = files()
    expect(await practice.answerPress(answer, 'my-data', person('heron'))).toMatchObject({
      text: ownData.onItsWay,
      privately: true,
    })
    expect(await practice.answerPress(answer, 'my-data', person('dipper'))).toMatchObject({
      text: textsFor('en').client.notYours,
    })
    const [shown] = await practice.say('heron', 'My data')
    expect(shown).toMatchObject({ kind: 'report', text: answer!.text })
    await practice.press('heron', 'my-data')
    await practice.wait(1)
    expect(files()).toBe(before + 2)
  })

  it('is the client’s alone: nobody else has the command, and a stranger is not known', async () => {
    expect((await practice.command('my-data', {}, 'wren'))?.text).toBe(textsFor('en').client.stranger)
  })
})

describe('a client’s data for the coach', () => {
  it('goes to the coach’s channel with a word that it leaves the private place', async () => {
    const answer = await practice.command('export-client', { client: 'heron', format: 'csv' })
    expect(answer?.text).toBe(ownDataForCoach.done)
    const message = report(practice.toCoach())
    expect(message).toMatchObject({ about: 'heron', address: { to: 'coach' } })
    expect(message!.text).toContain('out of this private place')
    expect(fileOf(message).text).toContain('2026-03-02,2,2,calf,5,none')
    expect((await practice.command('export-client', { client: 'heron' }, 'heron'))?.text).toBe(
      access.onlyInServer,
    )
  })

  it('holds none of the client’s words where the practice keeps them out of the channel', async () => {
    await practice.command('set-up', { quote: false }, COACH)
    for (const format of ['json', 'csv', 'fhir']) {
      await practice.command('export-client', { client: 'heron', format })
      const { text } = fileOf(report(practice.toCoach()))
      expect(text).not.toContain('since this morning')
      expect(text).not.toContain('row on Sunday')
    }
    const answer = await practice.command('export-client', { client: 'heron' })
    expect(answer?.text).toBe(ownDataForCoach.done)
    expect(JSON.parse(fileOf(report(practice.toCoach())).text).leftOut).toEqual(['notes', 'words'])
  })
})

describe('after leaving', () => {
  it('the record can still be had, until it is erased', async () => {
    await practice.command('leave', {}, 'dipper')
    expect((await practice.command('my-data', {}, 'dipper'))?.text).toBe(ownData.onItsWay)
    expect(JSON.parse(fileOf(report(practice.to('dipper'))).text).client.status).toBe('left')
    const gone = await practice.command('erase-me', { sure: true }, 'dipper')
    expect(gone?.text).toMatch(/\d+ rows are gone/)
    expect((await practice.command('my-data', {}, 'dipper'))?.text).toBe(textsFor('en').client.stranger)
  })
})
