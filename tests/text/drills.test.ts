import { describe, expect, it } from 'vitest'
import { drillAt, KIT_IDS, LADDERS, ladderOf } from '../../src/domain/ladder/ladders.ts'
import { DRILLS, doseLine, drillText, KIT, LADDER_NAMES, STOP_RULE } from '../../src/text/en/drills.ts'
import { gradeLevel, mean } from './reading-level.ts'

const drills = LADDERS.flatMap((ladder) => ladder.rungs)
const at = (ladder: string, rung: number) => drillAt(ladderOf(ladder)!, rung)!

describe('words and data belong together', () => {
  it('has words for every drill, and no words without a drill', () => {
    expect(Object.keys(DRILLS).sort()).toEqual(drills.map((drill) => drill.id).sort())
    for (const [id, prose] of Object.entries(DRILLS))
      for (const [part, words] of Object.entries(prose)) expect(words.trim(), `${id} ${part}`).not.toBe('')
  })

  it('has a name for every ladder and every piece of kit', () => {
    expect(Object.keys(LADDER_NAMES).sort()).toEqual(LADDERS.map((ladder) => ladder.id).sort())
    expect(Object.keys(KIT).sort()).toEqual([...KIT_IDS].sort())
  })

  it('gives each drill a name of its own', () => {
    expect(new Set(Object.values(DRILLS).map((prose) => prose.name)).size).toBe(drills.length)
  })

  it('refuses a drill that has no words rather than show it without its stop rule', () => {
    expect(() => drillText({ ...at('settle', 1), id: 'balance:1' }, 2)).toThrow('balance:1')
  })
})

describe('what a client reads', () => {
  it('stays under 500 characters a drill, with two or three sentences of how', () => {
    for (const drill of drills) {
      expect(drillText(drill, 6).length, drill.id).toBeLessThan(500)
      const sentences = DRILLS[drill.id]!.how.match(/[.!?](?:\s|$)/g) ?? []
      expect([2, 3], drill.id).toContain(sentences.length)
    }
  })

  it('reads at the level of a twelve-year-old (US grade 6 is ages 11 to 12)', () => {
    // worked example of the formula, 13 words of 24 syllables: 11.3 (value from memory)
    const example = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.'
    expect(Math.abs(gradeLevel(example) - 11.3)).toBeLessThan(0.1)
    const grades = drills.map((drill) => gradeLevel(drillText(drill, 2)))
    expect(mean(grades)).toBeLessThanOrEqual(6.9)
    expect(Math.max(...grades)).toBeLessThanOrEqual(6.9)
    expect(gradeLevel(STOP_RULE)).toBeLessThanOrEqual(6.9)
  })

  it('promises nothing and names no condition', () => {
    for (const text of [STOP_RULE, ...drills.map((drill) => drillText(drill, 2))])
      expect(text).not.toMatch(
        /\bsafe|all clear|diagnos|\bfine\b|cure|heal|\bwill (help|fix|ease)|disc|sciatica|guarantee/i,
      )
  })

  it('ends with the stop rule of the drill', () => {
    for (const drill of drills) expect(drillText(drill, 2).split('\n').at(-1), drill.id).toMatch(/^Stop if /)
  })
})

describe('what a careful coach would look for', () => {
  it('tells to stop for symptoms further down the leg, numbness and weakness, and sets no pain limit', () => {
    expect(STOP_RULE).toMatch(/further down your leg/)
    expect(STOP_RULE).toMatch(/new numbness or weakness/)
    expect(STOP_RULE).not.toMatch(/\d/)
  })

  it('has the band checked before the movement, and the way out told for unloading', () => {
    for (const drill of drills.filter(({ kit }) => kit.includes('band'))) {
      const text = drillText(drill, 2)
      expect(text.indexOf('Check first'), drill.id).toBeGreaterThan(0)
      expect(text.indexOf('Check first'), drill.id).toBeLessThan(text.indexOf(DRILLS[drill.id]!.how))
    }
    for (const rung of [1, 2])
      expect(DRILLS[`unload:${rung}`]!.how).toMatch(/To get out, go slowly back the same way/)
  })

  it('keeps the slider to the first light pull, never held', () => {
    for (const rung of [1, 2]) {
      expect(DRILLS[`glide:${rung}`]!.how).toMatch(/first light pull only/)
      expect(DRILLS[`glide:${rung}`]!.cautions).toMatch(/Never hold the pull/)
    }
  })

  it('keeps the hips heavy in press-ups and warns an artificial hip off the crossed leg', () => {
    for (const rung of [2, 3]) expect(DRILLS[`extension:${rung}`]!.how).toMatch(/hips .*heavy/)
    for (const rung of [1, 2, 3]) expect(DRILLS[`rotator:${rung}`]!.cautions).toMatch(/artificial hip/)
  })

  it('says half where the data say 50 %', () => {
    for (const drill of drills.filter(({ loadPercent }) => loadPercent === 50))
      expect(DRILLS[drill.id]!.how).toMatch(/\bhalf\b/)
  })
})

describe('the dose line', () => {
  it('is made of the numbers', () => {
    expect(doseLine(at('extension', 2), 2)).toBe('10 slow reps. Twice a day.')
    expect(doseLine(at('settle', 1), 1)).toBe('2 minutes. Once a day.')
    expect(doseLine(at('open', 2), 2)).toBe('5 times 5 seconds, 10 seconds of ease between. Twice a day.')
    expect(doseLine(at('glide', 1), 2)).toBe('10 slow reps on the sore side. Twice a day.')
    expect(doseLine(at('lift', 3), 1)).toBe('2 sets: 5 slow reps. Once a day.')
    expect(doseLine(at('extend-hip', 1), 1)).toBe(
      '8 times 2 seconds with each leg, 2 seconds of ease between. Once a day.',
    )
  })

  it("keeps to the plan's sessions, and to the drill's own ceiling where that is lower", () => {
    expect(doseLine(at('extension', 2), 3)).toMatch(/3 times a day/)
    expect(doseLine(at('extension', 2), 6)).toMatch(/4 times a day/)
    expect(doseLine(at('lift', 1), 3)).toMatch(/Once a day/)
  })

  it("shows the coach's load in place of the reminder", () => {
    expect(drillText(at('lift', 3), 1, '20 kg')).toContain('Load: 20 kg.')
    expect(drillText(at('lift', 3), 1)).toContain('Use no weight until your coach has named the load.')
  })
})
