import { afterAll, beforeAll, expect, it } from 'vitest'
import type { PostedEvent } from '../../src/rehearsal/platform/index.ts'
import { DRILLS } from '../../src/text/en/drills.ts'
import { textsFor } from '../../src/text/index.ts'
import { onBothDatabases } from '../store/databases.ts'
import type { ServiceProcess } from './service-process.ts'
import { openTown, type Town } from './service-town.ts'

/**
 * The bot as it runs in service: `src/main.ts` as a process of its own, the real chat client, engine and
 * database; only the platform is the stand-in. The tests tell one story, in order.
 */
const texts = textsFor('en')
const { client, coach, commands, screening, setUp: words } = texts
const FIRST = '2026-03-10T09:00:00Z'
// the clock of the second run: the next morning, half a minute after the prompts are due
const MORNING = '2026-03-11T08:00:30Z'
const REPLY = '1 knee 3, no signs'
const SIGN = 'numb between my legs since this morning, and I cannot feel when I pee'
const ALIASES = ['heron', 'dipper', 'wren']

const drills = Object.values(DRILLS).map(({ name }) => name)
const namesDrill = ({ content }: { content: string }): boolean =>
  drills.some((name) => content.includes(name))
const to = (who: { id: string }) => (event: PostedEvent) => event.recipient === who.id

onBothDatabases('the bot in service', (bench) => {
  let town: Town
  let service: ServiceProcess
  const logs: string[] = []

  beforeAll(async () => {
    town = await openTown(bench.kind === 'postgresql' ? await bench.address() : undefined)
    service = await town.start(FIRST)
  }, 60_000)
  afterAll(() => town.close())

  async function enrol(alias: 'heron' | 'dipper'): Promise<void> {
    const person = town[alias]
    await town.command(town.coach, 'enrol', {
      person: person.id,
      alias,
      side: 'left',
      zone: 'UTC',
      prompt: '08:00',
    })
    await town.press(person, client.consentYes)
    await town.press(person, texts.words.no)
    await town.fill(person, screening.title(1, 3), {
      signs: ['none'],
      age: '41',
      onset: '2026-02-10',
      earlier: ['no'],
      seen: ['yes'],
    })
    await town.fill(person, screening.title(2, 3), {
      risks: ['none'],
      known: ['none'],
      reach: ['calf'],
      pain: ['6'],
      side: ['left'],
    })
    await town.fill(person, screening.title(3, 3), {
      eases: ['extension'],
      activities: 'rowing 7',
      lift: 'none',
    })
    await town.next((event) => to(person)(event) && event.content === client.screened)
    const plan = { client: alias, sessions: 2, ladders: 'extension:2 glide:2', anyway: true }
    expect(await town.command(town.coach, 'plan', plan)).toContain(`Plan of ${alias} saved`)
  }

  it('declares its commands once', () => {
    expect(town.platform.registrations()).toBe(1)
  })

  it('refuses at set-up what cannot be, in words that name the mend', async () => {
    const { keeper, coachRole, coachChannel, hall } = town
    const setUp = (options: Record<string, string>) => town.command(keeper, 'set-up', options)
    expect(await setUp({ zone: 'Europe/Atlantis' })).toBe(commands.badZone('Europe/Atlantis'))
    expect(await setUp({ 'coach-channel': hall.id })).toContain(words.channelOpen('coach-channel'))
    expect(await setUp({ 'alert-channel': hall.id })).toContain(words.channelOpen('alert-channel'))
    const { overwrites } = coachChannel
    const { platform } = town
    const silent = overwrites.map((one) => (one.id === platform.appId ? { ...one, deny: 1n << 15n } : one))
    platform.build.setOverwrites(coachChannel.id, silent)
    await expect
      .poll(() => setUp({ 'coach-channel': coachChannel.id }))
      .toContain(words.channelLacks('coach-channel', [texts.chat.permissions.AttachFiles]))
    platform.build.setOverwrites(coachChannel.id, overwrites)
    await expect
      .poll(() => setUp({ 'coach-role': coachRole, 'coach-channel': coachChannel.id }))
      .toContain(words.policyOpen)
  })

  it('is set up, and refuses a zone that does not exist to a coach as well', async () => {
    const { keeper, coach: person, alertChannel, heron } = town
    const rest = { 'alert-channel': alertChannel.id, zone: 'UTC', region: 'PT', 'policy-settled': true }
    expect(await town.command(keeper, 'set-up', rest)).toContain(words.done)
    const wrong = { person: heron.id, alias: 'heron', zone: 'Lisbon' }
    expect(await town.command(person, 'enrol', wrong)).toBe(commands.badZone('Lisbon'))
    expect(await town.command(town.plover, 'today')).toBe(client.stranger)
  })

  it('enrols clients: consent by button, screening by forms, a plan', async () => {
    await Promise.all([enrol('heron'), enrol('dipper')])
    expect(await town.command(town.coach, 'roster')).toMatch(/heron[\s\S]*dipper|dipper[\s\S]*heron/)
  }, 40_000)

  it('takes a check-in by words, by form and by button, each with one receipt', async () => {
    const { heron, dipper, posted } = town
    let since = posted.length
    heron.say('2 calf 6')
    const receipt = await town.next((event) => to(heron)(event) && /calf/.test(event.content), since)
    expect(receipt.content).toMatch(/^Got it: .*calf.*6/)

    since = posted.length
    await town.command(heron, 'check-in')
    await town.fill(heron, client.fillIn, { sessions: ['1'], reach: ['knee'], pain: ['5'], side: ['left'] })
    const second = await town.next((event) => to(heron)(event) && /knee/.test(event.content), since)
    expect(second.content).toMatch(/^Got it: .*knee.*5/)

    // words that leave something out: the rest is asked one by one, and answered by buttons
    since = posted.length
    dipper.say('2 sessions')
    const asked = await town.next(
      (event) => to(dipper)(event) && event.content.includes(client.askValue('reach', 2)),
      since,
    )
    expect(asked.content).toMatch(/^Got it: 2 sessions/)
    await town.press(dipper, texts.words.reach('foot'))
    await town.next((event) => event.id === asked.id && event.change === 'edited', since)
    await town.press(dipper, '7')
    await expect.poll(() => town.command(dipper, 'my-record')).toMatch(/2 sessions.*foot.*7/)
  })

  it('tells the coach whose private messages are closed', async () => {
    const { wren, platform, coachChannel, posted } = town
    platform.closeDms(wren.id)
    const since = posted.length
    await town.command(town.coach, 'enrol', { person: wren.id, alias: 'wren' })
    const told = await town.next(
      (event) => event.channelId === coachChannel.id && /wren/.test(event.content),
      since,
    )
    expect(told.content).toMatch(/cannot be reached: their private messages are closed/)
  })

  it('tries again by itself where the platform fails', async () => {
    const { dipper, platform, posted } = town
    const since = posted.length
    platform.fault({ match: /POST .*\/messages$/, times: 4, status: 500 })
    dipper.say('2 thigh 5, no signs')
    const receipt = await town.next(to(dipper), since)
    expect(receipt.content).toMatch(/^Got it/)
    platform.clearFaults()
    expect(posted.slice(since).filter(to(dipper))).toHaveLength(1)
  }, 30_000)

  it('answers an urgent sign in under a second, and alerts the coach', async () => {
    const { heron, alertChannel, posted } = town
    const since = posted.length
    const begun = performance.now()
    heron.say(SIGN)
    const urgent = await town.next(to(heron), since)
    const ms = performance.now() - begun
    // the aim is 500 ms; the rest is room for a machine that does other work as well
    expect(ms).toBeLessThan(1_000)
    expect(urgent.content).toContain(client.emergency({ emergency: '112', cauda: true }))
    const alert = await town.next((event) => event.channelId === alertChannel.id, since)
    expect(alert.content).toMatch(/heron/)
    expect(alert.content).toContain(SIGN)
    process.stderr.write(`urgent sign answered after ${Math.round(ms)} ms\n`)
  })

  it('lets nobody but a coach take an alert up', async () => {
    const { plover, coach: person, alertChannel, heron, posted } = town
    let since = posted.length
    await town.press(plover, coach.takeUp, alertChannel)
    const refused = await town.next((event) => event.recipient === plover.id, since)
    expect(refused).toMatchObject({ content: client.notYours, ephemeral: true })
    expect(posted.slice(since).some(to(heron))).toBe(false)

    since = posted.length
    await town.press(person, coach.takeUp, alertChannel)
    await town.next((event) => to(heron)(event) && event.content === client.takenUp, since)
    const changed = await town.next(
      (event) => event.change === 'edited' && event.channelId === alertChannel.id,
      since,
    )
    expect(changed.content).toContain(coach.taken(`<@${person.id}>`))
  })

  it('ends within 5 seconds of SIGTERM, though a message is on its way', async () => {
    const { dipper, platform } = town
    platform.fault({ match: /POST .*\/messages$/, delayMs: 20_000 })
    const requests = platform.requests.length
    dipper.say('2 thigh 4, no signs')
    await expect.poll(() => platform.requests.length, { timeout: 5_000 }).toBeGreaterThan(requests)
    const ended = await service.stop()
    platform.clearFaults()
    logs.push(ended.out, ended.err)
    expect(ended.code).toBe(0)
    expect(ended.ms).toBeLessThan(5_000)
    expect(ended.err).toBe('')
    expect(ended.out).toContain('"stopped"')
  }, 20_000)

  it('applies after a restart what was written meanwhile, and sends what it still owed', async () => {
    const { dipper, heron, posted, platform } = town
    const since = posted.length
    dipper.say(REPLY)
    service = await town.start(MORNING)
    const receipt = await town.next((event) => to(dipper)(event) && /knee/.test(event.content), since)
    expect(receipt.content).toMatch(/knee.*3/)
    const owed = posted.filter((event) => to(dipper)(event) && /thigh.*4/.test(event.content))
    expect(owed).toHaveLength(1)
    expect(platform.registrations()).toBe(1)
    const prompt = await town.next((event) => to(dipper)(event) && namesDrill(event), since)
    expect(prompt.content).toMatch(/2 calf 4/)
    const morning = await town.next((event) => to(heron)(event) && event.content === client.morning, since)
    expect(morning.content).toBe(client.morning)
  }, 60_000)

  it('names no drill to a client with a sign open, whatever they ask, until a clinician has cleared them', async () => {
    const { heron, posted } = town
    const sign = posted.findIndex(
      (event) => to(heron)(event) && event.content.includes('needs care right now'),
    )
    expect(namesDrill({ content: await town.command(heron, 'today') })).toBe(false)
    const since = posted.length
    heron.say('today')
    heron.say('2 knee 3')
    heron.say('I am back')
    await town.next((event) => to(heron)(event) && event.content.includes(client.stillLocked), since)
    const early = { client: 'heron', by: 'general practitioner', on: '2026-03-09' }
    await town.command(town.coach, 'clear', early)
    expect(await town.command(heron, 'today')).not.toMatch(new RegExp(drills.join('|')))
    expect(posted.slice(sign).filter(to(heron)).filter(namesDrill)).toEqual([])

    const cleared = await town.command(town.coach, 'clear', { ...early, on: '2026-03-11' })
    expect(cleared).toBe(commands.cleared('heron', true))
    expect(namesDrill({ content: await town.command(heron, 'today') })).toBe(true)
  }, 40_000)

  it('kept within what the platform allows, and wrote nothing of anybody into its logs', async () => {
    const ended = await service.stop()
    logs.push(ended.out, ended.err)
    expect(ended).toMatchObject({ code: 0, err: '' })
    expect(town.platform.violations).toEqual([])
    const log = logs.join('')
    expect(log).toContain('"ready"')
    const people = [town.heron, town.dipper, town.wren].map(({ id }) => id)
    for (const secret of [
      ...ALIASES,
      ...people,
      REPLY,
      SIGN,
      'knee',
      'calf',
      'thigh',
      'numb',
      'general practitioner',
    ])
      expect(log).not.toContain(secret)
    for (const line of log.trim().split('\n')) expect(JSON.parse(line)).toHaveProperty('level')
  }, 20_000)
})
