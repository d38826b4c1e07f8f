import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { readCustomId } from '../../../src/chat/custom-id.ts'
import type { Weeks } from '../../../src/domain/digest/weeks.ts'
import { drawWeeks } from '../../../src/picture/index.ts'
import { openingOf } from '../../../src/rehearsal/page/offers.ts'
import type { Card } from '../../../src/rehearsal/page/wire.ts'
import { packageRoot } from '../../../src/store/root.ts'
import { textsFor } from '../../../src/text/index.ts'
import { launch, openPage, whyNoBrowser } from './browser.ts'
import { type Living, liveIn } from './living.ts'

// `npm run pictures`: the README's pictures, made anew from the demo, played through the real bot.
const FOLDER = join(packageRoot(), '.github', 'pictures')
const DEMO = join(packageRoot(), 'scenarios', 'demo.yaml')
const URGENT = { client: 'dipper', day: 10 }
// As wide as a README shows them, so that the files stay small.
const PAGE = { width: 1280, height: 1060 }
const DIGEST_PX = 520
const REPORT_PX = 680

async function make(): Promise<void> {
  const living = await liveIn(openingOf('demo.yaml', readFileSync(DEMO, 'utf8')))
  const browser = await launch()
  try {
    mkdirSync(FOLDER, { recursive: true })
    save('page-urgent.png', await urgentOn(living, browser))
    await living.act({ do: 'time', to: 'end' })
    const weeks = await weeksOf(living, 'heron')
    for (const theme of ['light', 'dark'] as const) {
      const { png } = drawWeeks(weeks, { theme, words: textsFor('en').digest.picture })
      save(`digest-${theme}.png`, await narrowed(browser, png, DIGEST_PX))
    }
    save('report.png', await narrowed(browser, await reportOf(living, 'heron'), REPORT_PX))
  } finally {
    await browser.close()
    await living.server.close()
  }
}

/** The page when a client has told of an urgent sign and nobody has taken it up yet. */
async function urgentOn(living: Living, browser: Browser): Promise<Uint8Array> {
  await living.act({ do: 'time', to: 'date', day: URGENT.day })
  while (!(await latest(living, URGENT.client, 'urgent'))) await living.act({ do: 'time', to: 'event' })
  const { page } = await openPage(browser, living.server.url)
  await page.setViewportSize(PAGE)
  await page.locator('#whose').selectOption(URGENT.client)
  await page.locator('#client-cards .care-emergency').last().waitFor()
  await page.evaluate('document.fonts.ready')
  return page.screenshot({ animations: 'disabled' })
}

async function latest(living: Living, who: string, kind: Card['kind']): Promise<Card | undefined> {
  const { cards } = await living.snapshot(who)
  return cards.findLast((card) => card.kind === kind && card.about === who)
}

/** What the latest digest of a client was drawn from. */
async function weeksOf(living: Living, who: string): Promise<Weeks> {
  const digest = await latest(living, who, 'digest')
  const id = digest?.rows.flat().flatMap((one) => readCustomId(one.id)?.outbox ?? [])[0]
  const row = await living.hub.session.stage.store.store.transaction((tx) => tx.outbox(id ?? ''))
  if (!row?.body.picture) throw new Error(`no digest of ${who} has a picture`)
  return row.body.picture.facts as Weeks
}

async function reportOf(living: Living, who: string): Promise<Uint8Array> {
  await living.act({ do: 'command', as: 'coach', line: `/report client:${who}` })
  const { cards } = await living.snapshot(who)
  const url = cards.findLast(({ side, pictures }) => side === 'coach' && pictures.length > 0)!.pictures[0]!
    .url
  return new Uint8Array(await (await fetch(living.server.url + url)).arrayBuffer())
}

async function narrowed(browser: Browser, png: Uint8Array, width: number): Promise<Uint8Array> {
  const page = await browser.newPage({ viewport: { width, height: 100 } })
  const source = `data:image/png;base64,${Buffer.from(png).toString('base64')}`
  await page.setContent(`<style>body{margin:0}img{display:block;width:100%}</style><img src="${source}">`)
  const made = await page.locator('img').screenshot({ omitBackground: true })
  await page.close()
  return made
}

function save(name: string, png: Uint8Array): void {
  writeFileSync(join(FOLDER, name), png)
  console.log(`.github/pictures/${name}  ${Math.round(png.length / 1024)} KB`)
}

const why = whyNoBrowser()
if (why) {
  console.error(why)
  process.exitCode = 1
} else await make()
