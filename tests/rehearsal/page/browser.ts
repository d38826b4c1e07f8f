import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import axe from 'axe-core'
import { type Browser, chromium, type Locator, type Page } from 'playwright-core'
import { expect } from 'vitest'

const NAMES = ['chromium', 'chromium-browser', 'google-chrome']

/** A browser of the Chromium family: the one that `EBBLINE_CHROMIUM` names, else the first on PATH; null: there is none. */
function findBrowser(): string | null {
  const { EBBLINE_CHROMIUM: named, PATH = '' } = process.env
  const places = named
    ? [named]
    : PATH.split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)))
  return places.find(isProgram) ?? null
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** Why the browser is not tried, and the mend; null where it is. */
export const whyNoBrowser = (): string | null =>
  findBrowser()
    ? null
    : 'SKIPPED, no Chromium: the rehearsal page is not tried in a browser. Install Debian’s package chromium, or name a browser in EBBLINE_CHROMIUM.'

export const launch = (): Promise<Browser> =>
  chromium.launch({ executablePath: findBrowser()!, args: ['--no-sandbox'] })

/** A page whose errors, warnings and requests to elsewhere are kept, to be looked at in the end. */
export async function openPage(browser: Browser, url: string): Promise<{ page: Page; wrong: string[] }> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, acceptDownloads: true })
  // a busy machine may take its time
  page.setDefaultTimeout(170_000)
  const wrong: string[] = []
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) wrong.push(message.text())
  })
  page.on('pageerror', (error) => wrong.push(String(error)))
  page.on('dialog', (dialog) => {
    wrong.push(`a dialog: ${dialog.message()}`)
    void dialog.dismiss()
  })
  page.on('request', (request) => {
    if (!request.url().startsWith(url)) wrong.push(`outside request: ${request.url()}`)
  })
  await page.goto(url)
  await page.waitForSelector('#who form')
  return { page, wrong }
}

/** Does something and waits until the practice is at rest again. */
export async function settled(page: Page, work: () => Promise<unknown>): Promise<void> {
  const answered = page.waitForResponse((response) => response.url().endsWith('/act'))
  await work()
  await (await answered).finished()
  await page.locator('body:not(.busy)').waitFor()
}

const TABS_MOST = 150
const FOCUS =
  "(() => { const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement); return outlineStyle === 'none' ? 0 : parseFloat(outlineWidth) })()"

/** Goes to something with the Tab key alone; each stop on the way shows that it has the focus. */
export async function tabTo(page: Page, to: Locator): Promise<void> {
  for (let n = 0; n < TABS_MOST; n += 1) {
    if (await to.evaluate((one) => one === one.ownerDocument.activeElement)) return
    await page.keyboard.press('Tab')
    const isSomewhere = await page.evaluate('document.activeElement !== document.body')
    if (isSomewhere) expect(await page.evaluate(FOCUS)).toBeGreaterThanOrEqual(2)
  }
  throw new Error('the Tab key does not lead there')
}

// What a theme can change is contrast alone.
const CHECKS = { light: 'axe.run()', dark: "axe.run({ runOnly: ['color-contrast'] })" }
const VIOLATIONS =
  ".then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes.map(({ html }) => html.slice(0, 150)).join(' | ')))"

/** No violation that axe-core knows of, in light and in dark. */
export async function accessible(page: Page): Promise<void> {
  if (!(await page.evaluate("'axe' in window"))) await page.evaluate(axe.source)
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    expect(await page.evaluate(CHECKS[colorScheme] + VIOLATIONS), colorScheme).toEqual([])
  }
}
