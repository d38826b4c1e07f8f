import { setTimeout as pause } from 'node:timers/promises'
import SqliteDatabase from 'better-sqlite3'
import { PLATFORM_RATES } from '../../src/rehearsal/platform/limits.ts'
import { type Bench, type Measured, once } from './measure.ts'
import { runBot } from './process.ts'
import { openStandIn } from './stand-in.ts'
import { town } from './town.ts'

const PROMPTS = 10_000
/** After its start the bot looks through everybody's messages once, at the platform's pace, and is then idle. */
const BEFORE_MS = (PROMPTS / 40) * 1000
/** No prompt for so long: it is over. */
const QUIET_MS = 30_000
const SHARE = 0.95
const REFUSED = 0.001

/** The instant at which everybody's next prompt is due. */
function dueAt(path: string): number {
  const db = new SqliteDatabase(path, { readonly: true })
  const at = db.prepare(`SELECT min("at") FROM "Due" WHERE "kind" = 'prompt'`).pluck().get() as string
  db.close()
  return Date.parse(at)
}

async function run(): Promise<Measured> {
  const { path, ...ids } = await town({ clients: PROMPTS, days: 1 })
  const shift = dueAt(path) - Date.now() - BEFORE_MS
  const due = performance.now() + BEFORE_MS
  const { platform } = await openStandIn(ids, 'platform', shift)
  const prompts = new Map<string, number>()
  const at: number[] = []
  platform.on('message', ({ recipient }) => {
    if (recipient === null) return
    prompts.set(recipient, (prompts.get(recipient) ?? 0) + 1)
    at.push(performance.now())
  })
  const bot = runBot(path, platform, shift)
  try {
    await bot.said('"ready"')
    await pause(Math.max(0, due - performance.now()))
    const [busy, asked] = [bot.processor(), platform.requests.length]
    while (performance.now() < Math.max(due, at.at(-1) ?? 0) + QUIET_MS) await pause(1_000)
    const processor = bot.processor() - busy
    const requests = platform.requests.slice(asked)
    const refused = requests.filter(({ status }) => status === 429).length
    const rate = (at.length - 1) / ((at.at(-1)! - at[0]!) / 1000)
    const share = rate / PLATFORM_RATES.global
    const twice = [...prompts.values()].filter((times) => times > 1).length
    const missing = PROMPTS - prompts.size
    return {
      figures: {
        prompts: { ...once(rate), unit: 'a second, one round' },
        'the first after': { ...once((at[0]! - due) / 1000), unit: 's' },
        'the last after': { ...once((at.at(-1)! - due) / 1000), unit: 's' },
        'the bot’s processor': { ...once((processor * 1000) / at.length), unit: 'ms a prompt' },
        'never came': { ...once(missing), unit: 'prompts' },
        'came twice': { ...once(twice), unit: 'prompts' },
        'refused by the limits': { ...once(refused), unit: `of ${requests.length} requests` },
      },
      ratios: {
        'rate / the limit of 50 a second': { ...once(share), goal: `>= ${SHARE}`, met: share >= SHARE },
        'refused / requests': {
          ...once(refused / requests.length),
          goal: `<= ${REFUSED}`,
          met: refused <= REFUSED * requests.length,
        },
        'twice or never / prompts': {
          ...once((twice + missing) / PROMPTS),
          goal: '0',
          met: twice + missing === 0,
        },
      },
    }
  } finally {
    await bot.stop()
    await platform.stop()
  }
}

export const fanOut: Bench = {
  id: 'fan-out',
  what: '10,000 prompts due at one instant, on a stand-in that keeps the platform’s 50 requests a second',
  run,
}
