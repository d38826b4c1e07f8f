import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { emptyPractice } from '../../../src/rehearsal/page/session.ts'
import { accessible, launch, openPage, settled, tabTo, whyNoBrowser } from './browser.ts'
import { ANSWERS, type Living, liveIn } from './living.ts'

const HOSTILE = [
  '<img src=x onerror="alert(1)"><script>alert(2)</script></li></ol>',
  'pain \u202eevif 4\u202c \u2066rtl\u2069 مرحبا ألم شديد',
  '👩🏽‍🚣👍🏿 2 calf 4 🦆',
  `long ${'x'.repeat(1995)}`,
]
const why = whyNoBrowser()
if (why) console.warn(why)

describe.skipIf(why !== null)(`a practice by keyboard alone, in a browser${why ? ` (${why})` : ''}`, () => {
  let living: Living
  let browser: Browser
  let page: Page
  let wrong: string[]
  /** Characters typed, and buttons and fields used, up to the first prompt. */
  const work = { typed: 0, uses: 0 }
  beforeAll(async () => {
    living = await liveIn(emptyPractice('2026-03-02', 'Europe/Lisbon'))
    browser = await launch()
    ;({ page, wrong } = await openPage(browser, living.server.url))
  })
  afterAll(async () => {
    await browser?.close()
    await living?.server.close()
  })

  const type = async (to: ReturnType<Page['locator']>, text: string): Promise<void> => {
    await tabTo(page, to)
    await page.keyboard.insertText(text)
    work.typed += text.length
    work.uses += 1
  }
  const use = async (to: ReturnType<Page['locator']>, key = 'Enter'): Promise<void> => {
    work.uses += 1
    await tabTo(page, to)
    await settled(page, () => page.keyboard.press(key))
  }
  const cards = (side: string) => page.locator(`#${side}-cards .card`)
  const write = async (text: string): Promise<void> => {
    await type(page.locator('#say-line'), text)
    await settled(page, () => page.keyboard.press('Enter'))
  }
  /** Fills in an open form: text fields, ticks and radio buttons, by Tab, Space and the arrows. */
  const fill = async (answers: Readonly<Record<string, string | string[]>>): Promise<void> => {
    const names = (await page
      .locator('#form [name]')
      .evaluateAll((all) => [...new Set(all.map((one) => one.getAttribute('name')))])) as string[]
    for (const name of names) {
      const given = answers[name]
      if (given === undefined) continue
      const fields = page.locator(`#form [name="${name}"]`)
      const kind = await fields.first().getAttribute('type')
      if (kind === 'radio') {
        const wanted = fields.locator(`xpath=self::*[@value="${given}"]`)
        await tabTo(page, fields.first())
        await page.keyboard.press('Space')
        while (!(await wanted.isChecked())) await page.keyboard.press('ArrowDown')
        work.uses += 1
      } else if (kind === 'checkbox') {
        for (const value of [given].flat()) {
          await tabTo(page, page.locator(`#form [name="${name}"][value="${value}"]`))
          await page.keyboard.press('Space')
          work.uses += 1
        }
      } else await type(fields, String(given))
    }
    await use(page.locator('#form button.main'))
    await expect.poll(() => page.locator('#form').isVisible()).toBe(false)
  }

  it('comes from nothing to the first prompt', async () => {
    await accessible(page)
    const step = page.locator('#first-steps')
    let isFormSeen = false
    for (let n = 0; n < 30 && (await step.isVisible()); n += 1) {
      const says = (await step.textContent()) ?? ''
      if (says.includes('type an alias')) {
        await type(page.locator('#new-name'), 'heron')
        await settled(page, () => page.keyboard.press('Enter'))
        await page.waitForSelector('#whose')
      } else if (says.includes('Be the client') || says.includes('Still as')) {
        await use(cards('client').last().locator('button.main, button:not(.danger)').first())
        if (await page.locator('#form').isVisible()) {
          if (!isFormSeen) await accessible(page)
          isFormSeen = true
          await fill(ANSWERS)
        }
      } else await use(step.locator('button.main'))
    }
    await expect
      .poll(() => page.locator('#client-cards .entry').last().textContent())
      .toMatch(/08:00Ebbline · prompt/)
    console.log(`the first steps: ${work.uses} buttons and fields, ${work.typed} characters to be typed`)
    // common practice, from memory: 40 words a minute are 200 characters; 2 s for each button or field
    expect((work.typed / 200) * 60 + work.uses * 2).toBeLessThan(120)
  })

  it('takes words, a button and a form; a form can be left with Escape', async () => {
    const prompt = cards('client').last()
    await use(prompt.getByRole('button', { name: /form/ }))
    await page.keyboard.press('Escape')
    expect(await page.locator('#form').isVisible()).toBe(false)
    await use(prompt.getByRole('button', { name: /form/ }))
    await accessible(page)
    await fill({ sessions: '2', reach: 'calf', pain: '4', signs: ['none'] })
    await expect.poll(() => cards('client').allInnerTexts()).toContainEqual(expect.stringMatching(/Got it/))
    await write('2 calf 5')
    await use(cards('client').getByRole('button', { name: 'None of these' }).last())
    const summary = cards('client').locator('summary').last()
    await tabTo(page, summary)
    await page.keyboard.press('Enter')
    await expect.poll(() => cards('client').locator('.why').last().textContent()).not.toBe('')
    await accessible(page)
  })

  it('shows whatever a client writes as text', async () => {
    for (const text of HOSTILE) {
      await write(text)
      await expect
        .poll(() => page.locator('#client-cards .card.person .text').last().textContent())
        .toBe(text)
    }
    expect(await page.locator('.card script, .card img[src="x"]').count()).toBe(0)
    const isWide = await page.evaluate('document.documentElement.scrollWidth > window.innerWidth')
    expect(isWide).toBe(false)
    await accessible(page)
  })

  it('goes from an urgent sign to the take-up and the clearance, and loses nothing when it is killed', async () => {
    await write('my saddle feels numb')
    await expect.poll(() => cards('client').last().textContent()).toContain('urgent')
    await expect.poll(() => cards('coach').last().textContent()).toContain('Urgent sign: heron')
    await accessible(page)
    const texts = () => page.locator('.card .text').allTextContents()
    const before = await texts()
    await tabTo(page, page.locator('#more summary'))
    await page.keyboard.press('Enter')
    await accessible(page)
    await use(page.locator('[data-name=kill]'))
    await page.reload()
    await page.waitForSelector('#whose')
    expect(await texts()).toEqual(before)
    await use(cards('coach').getByRole('button', { name: 'I take it up' }).last())
    await use(cards('coach').getByRole('button', { name: 'Seen by a clinician' }).last())
    expect(await page.locator('#whose').textContent()).toContain('locked')
    await type(page.locator('#order-line'), '/clear client:heron by:emergency physician on:2026-03-02')
    await settled(page, () => page.keyboard.press('Enter'))
    await expect.poll(() => page.locator('#whose').textContent()).toContain('active')
    await accessible(page)
  })

  it('says what cannot be done, and how', async () => {
    await type(page.locator('#order-line'), '/dec')
    await expect.poll(() => page.locator('#order-hint').textContent()).toMatch(/^\/decide: .*client: /)
    await page.locator('#order-line').fill('')
    await type(page.locator('#order-line'), '/clear')
    await settled(page, () => page.keyboard.press('Enter'))
    await expect.poll(() => page.locator('#status.problem').textContent()).toContain('client')
    await accessible(page)
  })

  it('is saved, and opened again the same', async () => {
    const words = () => page.locator('#client-cards .card .text').allTextContents()
    const before = await words()
    await tabTo(page, page.locator('#more summary'))
    if (!(await page.locator('#files').isVisible())) await page.keyboard.press('Enter')
    await tabTo(page, page.getByRole('link', { name: 'Save as a scenario' }))
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')])
    const yaml = readFileSync(await download.path())
    await page.locator('#file').setInputFiles({ name: 'mine.yaml', mimeType: 'text/yaml', buffer: yaml })
    await use(page.locator('[data-name=open]'))
    const bot = (texts: string[]) => texts.filter((text) => !/^(presses|fills in|chooses|\/)/.test(text))
    await expect.poll(async () => bot(await words()).slice(0, bot(before).length)).toEqual(bot(before))
    await accessible(page)
  })

  it('has never reported an error, nor asked for anything outside', () => expect(wrong).toEqual([]))
})
