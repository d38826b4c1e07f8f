import { existsSync, readFileSync } from 'node:fs'
import type { Browser, CDPSession } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { addDays } from '../../../src/domain/day.ts'
import { openingOf } from '../../../src/rehearsal/page/offers.ts'
import { accessible, launch, openPage, settled, whyNoBrowser } from './browser.ts'
import { type Living, liveIn } from './living.ts'

const why = whyNoBrowser()
if (why) console.warn(why)
// From a phone of 320 px (WCAG 2.2, 1.4.10 "Reflow"; a window of 1280 px at 400 %) to a wide screen.
const WIDTHS = [320, 640, 1280, 2560]
const WEEKS = 12
const CLIENTS = 20
const BYTES = 100_000_000
const STEPS = 7

describe.skipIf(why !== null)(`the page, looked at in a browser${why ? ` (${why})` : ''}`, () => {
  let living: Living
  let browser: Browser
  beforeAll(async () => {
    living = await liveIn(openingOf('demo.yaml', readFileSync('scenarios/demo.yaml', 'utf8')))
    browser = await launch()
  })
  afterAll(async () => {
    await browser?.close()
    await living?.server.close()
  })

  it('plays the demo to its end', async () => {
    const { page, wrong } = await openPage(browser, living.server.url)
    await settled(page, () => page.getByRole('button', { name: /^To the end/ }).click())
    await expect.poll(() => page.locator('#clock').textContent()).toContain('day 29')
    expect(await page.locator('.days button').count()).toBe(29)
    expect(await page.locator('#coach-cards img[alt]').count()).toBe(16)
    expect(await page.getByRole('button', { name: /^To the end/ }).count()).toBe(0)
    await page.locator('#coach-cards .card summary').last().click()
    await expect.poll(() => page.locator('#coach-cards .why').last().textContent()).not.toBe('')
    await accessible(page)
    await page.getByRole('button', { name: /^Day 10,/ }).click()
    await page.locator('#whose').selectOption('dipper')
    await page.locator('#client-cards .care-emergency').first().waitFor()
    await accessible(page)
    expect(wrong).toEqual([])
    await page.close()
  }, 180_000)

  it('plays by itself and pauses', async () => {
    const { page, wrong } = await openPage(browser, living.server.url)
    const before = await page.locator('#clock').textContent()
    await settled(page, () => page.getByRole('button', { name: 'Play' }).click()).catch(() => {})
    await expect.poll(() => page.locator('#clock').textContent()).not.toBe(before)
    await accessible(page)
    await page.getByRole('button', { name: 'Pause' }).click()
    await page.getByRole('button', { name: 'Play' }).waitFor()
    expect(wrong).toEqual([])
    await page.close()
  })

  it('fits every width, and a zoom of 200 %', async () => {
    const { page } = await openPage(browser, living.server.url)
    await page.locator('#more summary').click()
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 })
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth'), `${width}`).toBe(0)
      const lost = await page
        .locator('button:visible, input:visible, select:visible')
        .evaluateAll(
          (all, most) =>
            all.filter((one) => !one.closest('.days') && one.getBoundingClientRect().right > most).length,
          width,
        )
      expect(lost, `${width}`).toBe(0)
    }
    await settled(page, () => page.locator('[data-name=chat]').click())
    await page.getByText('The chat is down').waitFor()
    // at 200 % a window of 1280 by 800 has room for half as much
    await page.setViewportSize({ width: 640, height: 400 })
    expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBe(0)
    await accessible(page)
    await settled(page, () => page.locator('[data-name=chat]').click())
    await page.close()
  })

  it('moves nothing for those who wish so', async () => {
    const { page } = await openPage(browser, living.server.url)
    await page.emulateMedia({ reducedMotion: 'reduce' })
    const moving =
      "[...document.querySelectorAll('*')].filter((one) => { const { transitionDuration, animationName } = getComputedStyle(one); return transitionDuration !== '0s' || animationName !== 'none' }).length"
    expect(await page.evaluate(moving)).toBe(0)
    await page.close()
  })

  it('holds twelve weeks of twenty clients, stays small, and tells how long it takes', async () => {
    fillUp(living)
    const page = await browser.newPage()
    const began = performance.now()
    await page.goto(living.server.url)
    await page.locator('#coach-cards .card').first().waitFor()
    const readyMs = performance.now() - began
    const steps: { all: number; page: number }[] = []
    const protocol = await page.context().newCDPSession(page)
    await protocol.send('Performance.enable')
    for (let n = 0; n < STEPS; n += 1) {
      const [before, from] = [await workMs(protocol), performance.now()]
      await settled(page, () => page.locator('[data-name=day]').click())
      steps.push({ all: performance.now() - from, page: (await workMs(protocol)) - before })
    }
    await protocol.send('HeapProfiler.collectGarbage')
    const { usedSize } = await protocol.send('Runtime.getHeapUsage')
    const bytes = await privateBytes(browser)
    console.log(
      `twelve weeks, twenty clients: ready in ${Math.round(readyMs)} ms; ${megabytes(usedSize)} of heap, ${bytes === null ? 'memory not known' : `${megabytes(bytes)} in all`}; a day step ${median(steps.map(({ all }) => all))} ms, of it the page’s ${median(steps.map((one) => one.page))} ms`,
    )
    expect(await page.locator('.days button').count()).toBeGreaterThanOrEqual(7 * WEEKS)
    expect(bytes ?? usedSize).toBeLessThan(BYTES)
    await page.close()
  })
})

const WORK = ['ScriptDuration', 'LayoutDuration', 'RecalcStyleDuration']
/** What the page has worked so far: its script, and laying out. */
async function workMs(protocol: CDPSession): Promise<number> {
  const { metrics } = await protocol.send('Performance.getMetrics')
  const own = metrics.filter(({ name }) => WORK.includes(name))
  return own.reduce((sum, { value }) => sum + value * 1000, 0)
}

/** Memory that the page's process has for itself alone, as the kernel counts it; null where there is none to ask. */
async function privateBytes(browser: Browser): Promise<number | null> {
  const protocol = await browser.newBrowserCDPSession()
  const { processInfo } = await protocol.send('SystemInfo.getProcessInfo')
  const ids = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id)
  const sizes = ids.map((id) => {
    const path = `/proc/${id}/smaps_rollup`
    const lines = existsSync(path) ? readFileSync(path, 'utf8').matchAll(/^Private_\w+: +(\d+) kB$/gm) : []
    return [...lines].reduce((sum, [, kilobytes]) => sum + Number(kilobytes) * 1024, 0)
  })
  return Math.max(...sizes) > 0 ? Math.max(...sizes) : null
}

const megabytes = (bytes: number): string => `${Math.round(bytes / 1e6)} MB`
const median = (all: readonly number[]): number =>
  Math.round([...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]!)

/** As many cards as twenty clients leave in twelve weeks: the demo's own, under other names and on other days. */
function fillUp({ hub: { session } }: Living): void {
  const own = [...session.cards.all.values()]
  const { clock, script } = session.programme
  for (let block = 0; block < WEEKS / 4; block += 1)
    for (let n = 0; n < CLIENTS / 4; n += 1) {
      if (block === 0 && n === 0) continue
      for (const card of own) {
        const at = new Date(Date.parse(card.at) + block * 28 * 86_400_000).toISOString()
        const day = card.day + block * 28
        const about = card.about === null ? null : `${card.about}-${n}`
        const place = card.side === 'client' && n > 0 ? `client:${about}` : card.place
        const local = `${addDays(script.start, day - 1)}${card.local.slice(10)}`
        session.cards.all.set(`${card.id}-${block}-${n}`, {
          ...card,
          id: `${card.id}-${block}-${n}`,
          at,
          local,
          day,
          about,
          place,
        })
      }
    }
  clock.set(new Date(clock.world().getTime() + (WEEKS - 4) * 7 * 86_400_000))
}
