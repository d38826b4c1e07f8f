import { Resvg } from '@resvg/resvg-js'
import type { Weeks } from '../../src/domain/digest/weeks.ts'
import { draw } from '../../src/drawing.ts'
import { cardOf } from '../../src/engine/coach/digest.ts'
import { drawWeeks } from '../../src/picture/index.ts'
import { BOLD_FILE, REGULAR_FILE } from '../../src/picture/png.ts'
import type { OpenStore } from '../../src/store/open.ts'
import { openStore } from '../../src/store/open.ts'
import { textsFor } from '../../src/text/index.ts'
import { type Bench, figureOf, type Measured, over, processorTime, processorTimeOf } from './measure.ts'
import { A_PRACTICE, town } from './town.ts'

const DAYS = 42
/** Rounds that count: each draws forty cards twice, some seconds of work. */
const ROUNDS = 5
const GOAL = 1.5

/** A practice's cards from its rows to the picture's bytes, in the order of work of a real digest. */
async function cards(store: OpenStore, practice: string, now: Date): Promise<Weeks[]> {
  const files = await store.store.transaction((tx) => tx.roster(practice))
  const pictures = files.flatMap((file) =>
    cardOf(file, now, { textsFor }, now.toISOString()).postings.map(({ message }) => message.picture!),
  )
  for (const picture of pictures) await draw(picture)
  return pictures.map(({ facts }) => facts as Weeks)
}

/** The library alone, as its manual shows it, with the same fonts and width. */
const bare = (svg: string): Uint8Array =>
  new Resvg(svg, {
    fitTo: { mode: 'width', value: 800 },
    font: { fontFiles: [REGULAR_FILE, BOLD_FILE], loadSystemFonts: false },
  })
    .render()
    .asPng()

async function run(): Promise<Measured> {
  const { path } = await town({ clients: A_PRACTICE, days: DAYS })
  const store = await openStore(`file:${path}`)
  try {
    const [practice] = await store.store.transaction((tx) => tx.practices())
    const now = new Date()
    const words = textsFor('en').digest.picture
    const weeks = await cards(store, practice!.id, now)
    const svgs = weeks.map((one) => drawWeeks(one, { theme: 'light', words }).svg)
    const times = { ours: [] as number[], bare: [] as number[] }
    for (let round = 0; round < ROUNDS; round += 1) {
      times.ours.push(await processorTimeOf(() => cards(store, practice!.id, now)))
      times.bare.push(processorTime(() => svgs.forEach(bare)))
    }
    const rate = (ms: readonly number[]) => figureOf(ms.map((all) => (svgs.length * 1000) / all))
    const longer = over(times.ours, times.bare)
    const unit = `cards a second of processor, ${ROUNDS} rounds`
    return {
      figures: {
        'cards with picture': { ...rate(times.ours), unit },
        'resvg alone': { ...rate(times.bare), unit },
        'size of an SVG': {
          ...figureOf(svgs.map(({ length }) => length / 1000)),
          unit: 'thousand characters',
        },
      },
      ratios: { 'a card / resvg alone': { ...longer, goal: `<= ${GOAL}`, met: longer.median <= GOAL } },
    }
  } finally {
    await store.close()
  }
}

export const digest: Bench = {
  id: 'digest',
  what: 'weekly cards with a picture of six weeks, from the rows to the PNG, beside resvg rendering the same SVG',
  run,
}
