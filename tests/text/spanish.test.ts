import { describe, expect, it } from 'vitest'
import { LADDERS } from '../../src/domain/ladder/ladders.ts'
import { reportFacts } from '../../src/domain/report/report.ts'
import { PROPOSALS, RULE_IDS } from '../../src/domain/rules/assessment.ts'
import { isCaudaEquina, SIGN_IDS } from '../../src/domain/signs/catalogue.ts'
import { hintedSign } from '../../src/engine/check-in/asking.ts'
import { layOut } from '../../src/picture/report/layout.ts'
import { createRuler } from '../../src/picture/report/ruler.ts'
import { PAGE } from '../../src/picture/report/sheet.ts'
import { DRILLS } from '../../src/text/es/drill-prose.ts'
import { drillText, LADDER_NAMES, STOP_RULE } from '../../src/text/es/drills.ts'
import { sayThere } from '../../src/text/es/signs.ts'
import { textsFor } from '../../src/text/index.ts'
import { week } from '../domain/digest/week-facts.ts'
import { course as courseOf, hostile } from '../domain/report/course.ts'
import { CASES } from '../picture/cases.ts'
import { mean } from './reading-level.ts'
import { readingEase, syllables } from './reading-level-es.ts'
import { argumentsOf, leaves } from './samples.ts'

const es = textsFor('es')
const en = textsFor('en')
const MOST = 600
/** Nothing may say of a person's state that it is good. */
const REASSURES =
  /\b(segur[oa]s?|todo (va )?bien|nada grave|tranquil[oa]s?|no te preocupes|sin peligro|inofensiv[oa]|no pasa nada)\b/i
const DIAGNOSES = /\b(tienes (una? |el |la )?(hernia|ciática|cauda)|esto es (una? )?(hernia|ciática)|sufres)/i
const EXERCISE = new RegExp(
  [
    ...Object.values(LADDER_NAMES),
    'subida de brazos',
    'antebrazos',
    'deslizar',
    'respirar',
    'mecer',
    'bisagra',
    'estirar',
  ].join('|'),
  'i',
)

/** Every text that a client may read, with samples for what stands in it. */
const sources = {
  client: es.client,
  course: es.course,
  screening: es.screening,
  decided: es.decided,
  backAgain: es.backAgain,
  rules: { client: es.rules.client },
}
const english = new Map(leaves(en).map(({ path, value }) => [path, value]))
type Sentence = (...args: readonly unknown[]) => unknown
const said: Record<string, string> = Object.fromEntries(
  leaves(sources).flatMap(({ path, value }): [string, string][] => {
    if (typeof value === 'string') return [[path, value]]
    const sentence = english.get(path)
    if (typeof value !== 'function' || typeof sentence !== 'function') return []
    return [[path, String((value as Sentence)(...argumentsOf(path, sentence as Sentence)))]]
  }),
)
const summary = es.course.summary({
  weeks: 14,
  began: 'pantorrilla, dolor 6',
  now: 'espalda, dolor 1',
  activities: [
    { name: 'remar en el lago', from: 7, now: 2 },
    { name: 'sentarme en la mesa', from: 5, now: 1 },
    { name: 'levantar el bote', from: 9, now: 4 },
  ],
  percent: 86,
})
const urgent: Record<string, string> = {
  emergency: es.client.emergency({ emergency: '112', cauda: true }),
  emergencyOther: es.client.emergency({ emergency: null, cauda: false }),
  sameDay: es.client.sameDay({ emergency: '112', advice: '808 24 24 24', outOfHours: true }),
  sameDayByDay: es.client.sameDay({ emergency: null, advice: null, outOfHours: false }),
  selfHarm: es.client.selfHarm({ emergency: '112', crisis: '024' }),
  strangerUrgent: es.client.strangerUrgent,
  leftUrgent: es.client.leftUrgent,
  stillLocked: es.client.stillLocked,
  drillsLocked: es.client.drillsLocked,
  drillsWait: es.client.drillsWait,
  changesLater: es.client.changesLater,
  morning: es.client.morning,
  onTheWay: es.client.onTheWay,
  untaken: es.client.untaken,
  takenUp: es.client.takenUp,
  whichSign: es.client.whichSign,
  dischargedLocked: es.course.dischargedLocked(summary, null),
  stopped: es.decided.stopped,
  ...Object.fromEntries(SIGN_IDS.map((id) => [`hinted ${id}`, hintedSign(es, '2026-03-02', id, '112').text])),
}
const longest: Record<string, string> = {
  welcome: es.client.welcome('Harbour Boathouse Rowing and Strength', 365),
  discharged: `${es.course.discharged(summary, true)}\n${es.course.askRemind}`,
}

describe('what a client reads in Spanish', () => {
  it.each(Object.entries({ ...said, ...urgent, ...longest }))(
    'is short, promises nothing and names no condition: %s',
    (_, text) => {
      expect(text.length).toBeLessThanOrEqual(MOST)
      expect(text).not.toMatch(REASSURES)
      expect(text).not.toMatch(DIAGNOSES)
    },
  )

  it.each(Object.entries(urgent))('names no exercise while a sign is open or asked about: %s', (_, text) => {
    expect(text).not.toMatch(EXERCISE)
  })

  it.each(['emergency', 'emergencyOther', 'strangerUrgent', 'leftUrgent'])(
    'says whom to call first, not to drive and not to wait: %s',
    (name) => {
      expect(urgent[name]!.slice(0, 330)).toMatch(/llama al (112|número de emergencias local)/)
      expect(urgent[name]).toMatch(/No conduzcas/)
      expect(urgent[name]).toMatch(/no esperes/i)
    },
  )

  it('says posible síndrome de cauda equina for its five signs alone', () => {
    expect(urgent.emergency).toContain('posible síndrome de cauda equina')
    expect(urgent.emergencyOther).not.toContain('cauda')
    for (const id of SIGN_IDS) expect(sayThere([id]).includes('cauda equina'), id).toBe(isCaudaEquina(id))
  })

  it('gives the number of the region for thoughts of self-harm', () => {
    expect(urgent.selfHarm).toContain('024')
    expect(urgent.selfHarm).toContain('112')
  })
})

describe('reading ease in Spanish', () => {
  it('counts syllables as they are spoken (by hand)', () => {
    const counted = {
      día: 2,
      pie: 1,
      rodilla: 3,
      pantorrilla: 4,
      ciudad: 2,
      guía: 2,
      leer: 2,
      que: 1,
      hoy: 1,
      cauda: 2,
      sesión: 2,
    }
    for (const [word, n] of Object.entries(counted)) expect(syllables(word), word).toBe(n)
  })

  it('is at the sixth year of school or below, urgent words too', () => {
    const questions = Object.values(es.screening.question)
    const sentences = Object.values(said).filter((text) => /[a-zñ]{2,}.*[.?!]/.test(text))
    expect(mean([...sentences, ...questions].map(readingEase))).toBeGreaterThanOrEqual(70)
    expect(mean(Object.values(urgent).map(readingEase))).toBeGreaterThanOrEqual(70)
  })

  it('is so for each of the longer texts and each drill', () => {
    const drills = LADDERS.flatMap(({ rungs }) => rungs).map(
      (drill) => [drill.id, drillText(drill, 2)] as const,
    )
    const longer = Object.entries({ ...said, ...urgent, ...longest }).filter(([, text]) => text.length > 100)
    const hard = [...longer, ...drills]
      .map(([name, text]) => [name, Math.round(readingEase(text))] as const)
      .filter(([, ease]) => ease < 65)
    expect(hard).toEqual([])
    expect(mean(drills.map(([, text]) => readingEase(text)))).toBeGreaterThanOrEqual(75)
  })
})

describe('drills in Spanish', () => {
  it('stay within the limit, with two or three sentences of how, and end with when to stop', () => {
    for (const drill of LADDERS.flatMap(({ rungs }) => rungs)) {
      const text = drillText(drill, 6)
      expect(text.length, drill.id).toBeLessThanOrEqual(MOST)
      expect([2, 3], drill.id).toContain((DRILLS[drill.id]!.how.match(/[.!?](?:\s|$)/g) ?? []).length)
      expect(text.split('\n').at(-1), drill.id).toMatch(/^Para si /)
      expect(text).not.toMatch(REASSURES)
      if (drill.kit.includes('band')) expect(text.indexOf('Antes mira'), drill.id).toBeGreaterThan(0)
    }
  })

  it('have the stop rule without a limit of pain in numbers', () => {
    expect(STOP_RULE).toMatch(/baja más por la pierna/)
    expect(STOP_RULE).toMatch(/adormecimiento nuevo o debilidad/)
    expect(STOP_RULE).not.toMatch(/\d/)
  })
})

describe('what a coach reads in Spanish', () => {
  const full = week({
    standing: 'locked',
    urgentOpen: true,
    alertOpen: true,
    signs: SIGN_IDS.map((sign) => ({ sign, care: 'emergency', day: '2026-03-11' })),
    flags: RULE_IDS.map((rule) => ({
      rule,
      level: 'hold' as const,
      day: '2026-03-10',
      figures: { word: 'worsening', painTo: 3 },
      source: '',
    })),
    proposal: 'stop',
    reasons: RULE_IDS.map((rule) => ({ rule, day: '2026-03-10' })),
  })
  const ENGLISH = /\b(the|and|with|since|week|pain|reach|sessions|replies|sign|urgent|hold|ease)\b/i

  it('has a card within the limit, no word of it English', () => {
    for (const facts of [week(), full, ...PROPOSALS.map((proposal) => week({ proposal }))]) {
      const card = es.digest.card(facts)
      expect(card.length).toBeLessThanOrEqual(1_800)
      expect(card).not.toMatch(ENGLISH)
    }
    expect(es.digest.card(week({ pain: { ...week().pain, now: 4.5 } }))).toContain('4,5 ahora')
  })

  it('has a description of every picture within the limit', () => {
    for (const [name, weeks] of Object.entries(CASES)) {
      expect(es.digest.alt(weeks).length, name).toBeLessThanOrEqual(1_000)
      if (name !== 'oddName') expect(es.digest.alt(weeks), name).not.toMatch(ENGLISH)
    }
  })

  it.each([
    ['14 weeks', reportFacts(courseOf(98))],
    ['as much as may ever stand in it', hostile],
  ])('has a report of one page: %s', (_, facts) => {
    const measure = createRuler()
    const marks = layOut(es.report.page(facts), measure, es.digest.picture)
    const beyond = marks.filter((mark) => {
      const width = mark.kind === 'words' ? measure(mark.words, mark.size, mark.bold) : mark.width
      return mark.x + width > PAGE.width - PAGE.margin + 0.5 || mark.y > PAGE.height - PAGE.margin + 0.5
    })
    expect(beyond).toEqual([])
  })
})
