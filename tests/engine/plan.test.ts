import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openPractice, type Practice } from './practice.ts'

let practice: Practice
beforeEach(async () => {
  practice = await openPractice('2026-03-02')
})
afterEach(() => practice.close())

const plan = (ladders: string, more: Record<string, string | number | boolean> = {}) =>
  practice.command('plan', { client: 'heron', sessions: 2, ladders, ...more })
const names = (answer: Awaited<ReturnType<typeof plan>>) => answer?.choices?.buttons.map(({ name }) => name)

describe('a plan against which something speaks', () => {
  it('is not saved before the coach has read it and goes on', async () => {
    await practice.enrol('heron', {}, { eases: ['flexion'] }, '')
    const asked = await plan('extension:2 unload:1 settle:1')
    expect(asked?.text).toMatch(/Not saved yet: heron/)
    expect(asked?.text).toMatch(/Bend back 2 \(Half press-up\) starts above/)
    expect(asked?.text).toMatch(/Bend back 2 .* eased by bending forward/)
    expect(asked?.text).toMatch(/Unload 1 .* band.*anchor/)
    expect(names(asked)).toEqual(['save-anyway', 'change'])
    expect((await practice.file('heron')).plan).toBeNull()
    expect(practice.to('heron').some(({ drills }) => drills.length > 0)).toBe(false)

    const saved = await practice.answerPress(asked, 'save-anyway')
    expect(saved?.text).toMatch(/saved[\s\S]*Saved although:/)
    expect(saved?.choices?.buttons).toEqual([])
    const { plan: row } = await practice.file('heron')
    expect(row).toMatchObject({ checked: ['unload'], by: '<@coach-1>' })
    expect(practice.to('heron').at(-1)).toMatchObject({
      kind: 'plan',
      drills: ['settle:1', 'extension:2', 'unload:1'],
    })
    // read once, confirmed once: the same plan again says nothing
    expect((await plan('extension:2 unload:1 settle:1'))?.text).not.toMatch(/Not saved|although/)
  })

  it('is said back for changing, and nothing is saved', async () => {
    await practice.enrol('heron', {}, {}, '')
    const asked = await plan('lift:2', { loads: 'lift:2 5 kilos bell', off: 'sat sun' })
    expect(asked?.text).toMatch(/Lift again 2 \(Light carry\) opens when reach is back or none/)
    expect(asked?.text).not.toMatch(/has no load/)
    const again = await practice.answerPress(asked, 'change')
    expect(again?.text).toContain(
      '/plan client:heron sessions:2 ladders:lift:2 loads:lift:2 5 kilos bell off:Sat Sun',
    )
    expect((await practice.file('heron')).plan).toBeNull()
  })

  it('is looked at afresh at the press: a sign refuses it, another plan or something new is said', async () => {
    await practice.enrol('heron', {}, {}, '')
    const first = await plan('extension:2')
    const second = await plan('extension:3')
    await practice.answerPress(first, 'save-anyway')
    expect((await practice.answerPress(second, 'save-anyway'))?.text).toMatch(/changed in between/)
    expect(await practice.rungs('heron')).toEqual({ extension: 2 })

    const third = await plan('extension:2 glide:2')
    await practice.say('heron', 'I cannot feel when I wipe')
    expect(await practice.status('heron')).toBe('locked')
    expect((await practice.answerPress(third, 'save-anyway'))?.text).toMatch(/No plan .*\n.*locked/)
    expect(await practice.rungs('heron')).toEqual({ extension: 2 })
    expect((await plan('extension:1', { anyway: true }))?.text).toMatch(/locked/)
  })

  it('cannot be pressed by somebody without the role', async () => {
    await practice.enrol('heron', {}, {}, '')
    const asked = await plan('extension:2')
    const stranger = { user: 'coach-1', guild: 'guild-1', roles: [], keeper: false }
    await practice.answerPress(asked, 'save-anyway', stranger)
    expect((await practice.file('heron')).plan).toBeNull()
  })
})

describe('a plan that cannot be', () => {
  it('is refused with what is allowed, even with anyway', async () => {
    await practice.enrol('heron', {}, {}, '')
    expect((await plan('stretch:1', { anyway: true }))?.text).toMatch(
      /no ladder “stretch”.*settle, extension/,
    )
    expect((await plan('extension:4', { anyway: true }))?.text).toMatch(/rungs 1 to 3, not 4/)
    expect((await plan('extension:1', { from: '2026-02-01' }))?.text).toMatch(/has gone/)
    expect((await plan('extension:1 extension:2'))?.text).toMatch(/could not read/)
    expect((await plan('lift:2', { loads: 'lift:2 light', anyway: true }))?.text).toMatch(/number from 0.5/)
    expect((await plan('lift:2', { loads: 'lift:9 5 kg', anyway: true }))?.text).toMatch(
      /no rung of this plan/,
    )
    expect((await plan('lift:2', { loads: 'five' }))?.text).toMatch(/could not read the loads/)
    expect((await plan('extension:1', { off: 'someday' }))?.text).toMatch(/no weekdays/)
    expect((await practice.file('heron')).plan).toBeNull()
  })
})

describe('loads and days off', () => {
  it('stand on their rung and reach the client', async () => {
    await practice.enrol('heron', {}, {}, '')
    await plan('glide:2 lift:2', {
      loads: 'lift:5kg bell; lift:3 20 kg; glide: light band',
      off: 'Sun',
      anyway: true,
    })
    const file = await practice.file('heron')
    expect(file.plan?.loads).toEqual({ 'lift:2': '5 kg bell', 'lift:3': '20 kg', 'glide:2': 'light band' })
    expect(file.client.off).toEqual(['Sun'])
    const told = practice.to('heron').at(-1)!.text
    expect(told).toContain('Load: 5 kg bell.')
    expect(told).toContain('Load: light band.')
    expect(told).toContain('Check first: no nick in the band')
    expect(told).toContain('Clear your path first.')
    await plan('lift:1', { anyway: true, off: 'none' })
    expect((await practice.file('heron')).client.off).toEqual([])
  })

  it('without a load the client is told to use no weight', async () => {
    await practice.enrol('heron', {}, {}, 'lift:2')
    expect((await practice.command('today', {}, 'heron'))?.text).toContain('Use no weight until your coach')
  })
})

describe('a plan that is the plan already', () => {
  const typed = () => plan('extension:1 lift:1', { loads: 'lift:1 5 kg', off: 'Sun', anyway: true })
  const written = async () => {
    const { plan: row, rungs, client } = await practice.file('heron')
    return { id: row?.id, rungs: rungs.length, off: client.off, told: practice.to('heron').length }
  }

  it('is said to be so, and neither written nor told again', async () => {
    await practice.enrol('heron', {}, {}, '')
    expect((await typed())?.text).toMatch(/saved/)
    const before = await written()
    const again = await typed()
    expect(again?.text).toMatch(/the plan of heron already/)
    expect(again?.choices ?? null).toBeNull()
    await practice.until('2026-03-04', '09:00')
    const later = practice.to('heron').length
    await plan('lift:1 extension:1')
    expect(await written()).toEqual({ ...before, told: later })
  })

  it('is saved where anything is otherwise: sessions, a rung, a load, days off, or after a stop', async () => {
    await practice.enrol('heron', {}, {}, '')
    await typed()
    const others = [
      () => plan('extension:1 lift:1', { sessions: 3 }),
      () => plan('extension:2 lift:1', { sessions: 3, anyway: true }),
      () => plan('extension:2 lift:1', { sessions: 3, loads: 'lift:1 6 kg', anyway: true }),
      () => plan('extension:2', { sessions: 3 }),
      () => plan('extension:2', { sessions: 3, off: 'none' }),
    ]
    for (const other of others) expect((await other())?.text).toMatch(/saved/)
    // in force today, so it is in force on every later day too
    expect((await plan('extension:2', { sessions: 3, from: '2026-03-06' }))?.text).toMatch(/already/)
    await practice.command('decide', { client: 'heron', do: 'stop', anyway: true })
    expect((await plan('extension:2', { sessions: 3 }))?.text).toMatch(/saved/)
  })

  it('is saved while it has not begun and another first day is named', async () => {
    await practice.enrol('heron', {}, {}, '')
    for (const from of ['2026-03-06', '2026-03-05', '2026-03-07'])
      expect((await plan('extension:2', { from, anyway: true }))?.text).toMatch(/saved/)
    expect((await practice.file('heron')).client.start).toBe('2026-03-07')
    expect((await plan('extension:2', { from: '2026-03-07' }))?.text).toMatch(/already/)
  })
})

it('asks at once where it is to begin today and the time of the prompt has passed', async () => {
  await practice.enrol('heron', {}, {}, '')
  await practice.wait(12 * 60)
  const asked = () => practice.to('heron').filter(({ kind }) => kind === 'prompt').length
  const today = '2026-03-02'
  expect((await plan('extension:2', { from: today, anyway: true }))?.text).toMatch(/saved/)
  await practice.wait(1)
  expect(asked()).toBe(1)
})

it('keeps the history of the plan, latest first', async () => {
  await practice.enrol('heron', {}, {}, '')
  expect((await practice.command('plan-history', { client: 'heron' }))?.text).toContain('no plan yet')
  await plan('extension:1 glide:1')
  await practice.wait(60)
  await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'glide', anyway: true })
  await practice.until('2026-03-04', '09:00')
  await plan('extension:1 lift:2', { sessions: 3, loads: 'lift:2 5 kg', anyway: true })
  const lines = (await practice.command('plan-history', { client: 'heron' }))!.text.split('\n')
  expect(lines).toEqual([
    '**Plan of heron, latest first**',
    '• Thu 5 Mar 2026: plan by <@coach-1>, 3 sessions a day; loads lift:2 5 kg',
    expect.stringMatching(/Glide out of the plan \(plan, by <@coach-1>\)|Lift again begins at 2/),
    expect.stringMatching(/Glide out of the plan \(plan, by <@coach-1>\)|Lift again begins at 2/),
    '• Tue 3 Mar 2026: Glide 1 → 2 (advanced, by <@coach-1>)',
    '• Mon 2 Mar 2026: plan by <@coach-1>, 2 sessions a day',
    expect.stringMatching(/begins at 1/),
    expect.stringMatching(/begins at 1/),
  ])
})
