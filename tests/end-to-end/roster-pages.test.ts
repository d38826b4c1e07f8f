import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { PostedMessage } from '../../src/rehearsal/platform/index.ts'
import { textsFor } from '../../src/text/index.ts'
import type { ServiceProcess } from './service-process.ts'
import { buttonOf, openTown, type Town } from './service-town.ts'

/** The roster of a full boathouse, turned by its buttons through the real chat client; only the platform stands in. */
const { roster, record } = textsFor('en')
const FIRST = '2026-03-10T09:00:00Z'
const CLIENTS = 25

let town: Town
let service: ServiceProcess

beforeAll(async () => {
  town = await openTown()
  service = await town.start(FIRST)
  const { keeper, coach, coachRole, coachChannel, alertChannel, platform } = town
  await town.command(keeper, 'set-up', {
    'coach-role': coachRole,
    'coach-channel': coachChannel.id,
    'alert-channel': alertChannel.id,
    zone: 'UTC',
    'policy-settled': true,
  })
  for (let n = 1; n <= CLIENTS; n++) {
    const alias = `rower-${String(n).padStart(2, '0')}`
    const person = platform.addUser(alias)
    platform.build.addMember(coachChannel.guildId!, person.id)
    await town.command(coach, 'enrol', { person: person.id, alias, side: 'left' })
  }
}, 120_000)
afterAll(() => town.close())

async function shown(name: string, options: Record<string, string> = {}): Promise<PostedMessage> {
  const answer = await town.coach.slash(town.coachChannel.id, name, options)
  if (answer.outcome !== 'deferred') throw new Error(`/${name}: ${answer.outcome}`)
  return answer.completed
}
const press = (message: PostedMessage, label: string) =>
  town.coach.press(message.id, String(buttonOf(message, label)!.custom_id))
const content = (message: PostedMessage): string => town.platform.message(message.id)!.content

describe('the roster of a full boathouse', () => {
  it('is told to the coach alone and turned in place, a restart between', async () => {
    const page = await shown('roster')
    expect(page.content).toContain('page 1 of 2')
    expect(page).toMatchObject({ ephemeral: true, recipient: town.coach.id })
    await expect(town.plover.press(page.id, String(buttonOf(page, roster.next)!.custom_id))).rejects.toThrow()
    await press(page, roster.next)
    await expect.poll(() => content(page), { timeout: 10_000 }).toContain('page 2 of 2')
    service.kill()
    service = await town.start('2026-03-10T09:05:00Z')
    await press(town.platform.message(page.id)!, roster.previous)
    await expect.poll(() => content(page), { timeout: 10_000 }).toContain('page 1 of 2')
    expect(buttonOf(town.platform.message(page.id)!, roster.previous)).toBeUndefined()
  }, 60_000)

  it('opens the record of a client chosen from it, beside it and in private', async () => {
    const page = await shown('roster')
    const { posted, coach, platform } = town
    const since = posted.length
    const list = platform
      .message(page.id)!
      .components.flatMap((row) => row.components ?? [])
      .find((part) => part.type === 3)!
    expect(list.options).toHaveLength(20)
    await coach.choose(page.id, String(list.custom_id), ['rower-07'])
    const opened = await town.next(({ content }) => content.includes('**rower-07**'), since)
    expect(opened.content).toContain('2026-W11')
    expect(opened).toMatchObject({ ephemeral: true, recipient: coach.id })
    expect(content(page)).toContain('page 1 of 2')
  }, 60_000)

  it('refuses a client who is not there and a week that is none, with nothing posted', async () => {
    const since = town.posted.length
    expect((await shown('client-record', { client: 'osprey' })).content).toContain('no client “osprey”')
    const bad = await shown('client-record', { client: 'rower-07', week: 'soon' })
    expect(bad.content).toBe(record.badWeek('soon'))
    expect(town.posted.slice(since).filter((event) => event.interactionId === null)).toEqual([])
  }, 60_000)
})
