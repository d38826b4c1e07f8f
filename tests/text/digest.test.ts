import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rollCall } from '../../src/domain/digest/attention.ts'
import type { WeekFacts } from '../../src/domain/digest/facts.ts'
import { PROPOSALS, RULE_IDS } from '../../src/domain/rules/assessment.ts'
import { SIGN_IDS } from '../../src/domain/signs/catalogue.ts'
import { meaningfulPain } from '../../src/domain/trend/change.ts'
import { digestCard, rollCallText } from '../../src/text/en/digest.ts'
import { digestAlt } from '../../src/text/en/digest-picture.ts'
import { harmless } from '../../src/text/harmless.ts'
import { week } from '../domain/digest/week-facts.ts'
import { CASES } from '../picture/cases.ts'

/** Words that no message may say of a client's state. */
const NEVER = /\b(safe|fine|all.clear|nothing to worry|healthy|cured|diagnos\w*)\b/i
const EVERY_RULE = RULE_IDS.map((rule) => ({
  rule,
  level: 'hold' as const,
  day: '2026-03-10',
  figures: { word: 'worsening', painTo: 3 },
  source: '',
}))
const FULL = week({
  standing: 'locked',
  urgentOpen: true,
  alertOpen: true,
  signs: SIGN_IDS.map((sign) => ({ sign, care: 'emergency', day: '2026-03-11' })),
  flags: EVERY_RULE,
  rungs: Array.from({ length: 20 }, (_, n) => ({
    ladder: `${'x'.repeat(60)}${n}`,
    rung: 2,
    last: 3,
    resting: true,
  })),
  barrier: 'y'.repeat(500),
  filledLater: [
    '2026-03-09',
    '2026-03-10',
    '2026-03-11',
    '2026-03-12',
    '2026-03-13',
    '2026-03-14',
    '2026-03-15',
  ],
  signsNotSaid: [
    '2026-03-09',
    '2026-03-10',
    '2026-03-11',
    '2026-03-12',
    '2026-03-13',
    '2026-03-14',
    '2026-03-15',
  ],
  proposal: 'stop',
  reasons: RULE_IDS.map((rule) => ({ rule, day: '2026-03-10' })),
})

describe("the client's card", () => {
  it('gives the facts in the order a coach scans them', () => {
    const facts = week({
      flags: [{ rule: 'gate', level: 'note', day: '2026-03-13', figures: {}, source: '' }],
      rungs: [
        { ladder: 'extension', rung: 2, last: 3, resting: false },
        { ladder: 'glide', rung: 1, last: 2, resting: true },
      ],
      barrier: 'time',
      filledLater: ['2026-03-11'],
      signsNotSaid: ['2026-03-12'],
      proposal: 'advance',
      ladder: 'extension',
      reasons: [{ rule: 'gate', day: '2026-03-13' }],
    })
    expect(digestCard(facts).split('\n')).toEqual([
      '**heron** · week 4, Mon 9 Mar to Sun 15 Mar',
      '**Can move on**',
      'Replies 6/7 · sessions 11/12 of the days answered (92 %, likely 65-99 %)',
      'Reach week by week (baseline calf): calf, calf, knee: centralising, toward the back',
      'Pain, median of 7 days: 4 now, 5 a week ago, 6 at baseline, 2 points (33 %) better: enough to matter (2 points and 30 %); worst 6 on Tue 10 Mar',
      'Flags: gate to the next rung met (since Fri 13 Mar)',
      'Rungs: Bend back 2/3, Glide 1/2 (resting)',
      'In the way: time',
      'Filled in later: Wed 11 Mar',
      'Warning signs not said (which is not "none"): Thu 12 Mar',
      '**Proposal: advance, Bend back**, because of gate to the next rung met since Fri 13 Mar',
    ])
  })

  it('puts an open sign first and says that drills are stopped', () => {
    const card = digestCard(
      week({
        standing: 'locked',
        urgentOpen: true,
        alertOpen: true,
        signs: [{ sign: 'bladder-change', care: 'emergency', day: '2026-03-11' }],
        proposal: 'stop',
        reasons: [{ rule: 'sign', day: '2026-03-11' }],
      }),
    ).split('\n')
    expect(card[0]).toContain('locked')
    expect(card[1]).toBe(
      '**Needs you:** nobody has taken up the alert of Wed 11 Mar; urgent sign open since Wed 11 Mar',
    )
    expect(card[2]).toMatch(/^Signs open: bladder change \(emergency\) since Wed 11 Mar\. Drills are stopped/)
  })

  it('still tells of a sign that was cleared in the week', () => {
    const cleared = [
      { sign: 'saddle-numbness', care: 'emergency', day: '2026-03-11', cleared: '2026-03-15' },
    ] as const
    expect(digestCard(week({ cleared })).split('\n')[1]).toBe(
      'Signs cleared: saddle numbness or tingling (emergency) from Wed 11 Mar, cleared Sun 15 Mar.',
    )
  })

  it('names the least change that the rules go by', () => {
    expect(meaningfulPain(6, 4)).toBe(true)
    expect(meaningfulPain(6, 4.5)).toBe(false)
    expect(meaningfulPain(7, 5)).toBe(false) // 28.6 %
  })

  it('says what is not known, and worse as worse', () => {
    const empty = week({
      sessions: { done: 0, planned: 0, percent: null, low: null, high: null },
      reach: { path: [null, null], direction: 'unclear', baseline: null },
      pain: {
        now: 5,
        weekAgo: null,
        baseline: 4,
        change: 1,
        percent: 25,
        meaningful: false,
        worst: null,
      },
    })
    const card = digestCard(empty)
    expect(card).toContain('no sessions planned on the days answered')
    expect(card).toContain('no answer, no answer: direction unclear')
    expect(card).toContain('5 now, not known a week ago, 4 at baseline, 1 point (25 %) worse')
  })

  it('does not call a change small where there are too few answers to say', () => {
    const pain = { now: 3, weekAgo: 3, baseline: 6, change: -3, percent: -50, meaningful: null, worst: null }
    expect(digestCard(week({ pain }))).toContain('3 points (50 %) better: too few answers to say')
  })

  it('keeps to 1,800 characters with everything at once, proposal and open signs never cut', () => {
    const card = digestCard(FULL)
    expect(card.length).toBeLessThanOrEqual(1800)
    expect(card).toContain('Signs open: ')
    expect(card).toContain('**Proposal: stop**')
  })

  it.each(PROPOSALS)('has no forbidden word (%s)', (proposal) => {
    expect(digestCard({ ...FULL, proposal })).not.toMatch(NEVER)
    expect(digestCard(week({ proposal }))).not.toMatch(NEVER)
  })
})

describe('words from data', () => {
  it('cannot format, link or call anybody', () => {
    expect(harmless('**bold** _x_ `y` ||z|| ~~s~~')).toBe(
      '\\*\\*bold\\*\\* \\_x\\_ \\`y\\` \\|\\|z\\|\\| \\~\\~s\\~\\~',
    )
    expect(harmless('@everyone <@123> #room')).toBe('@\u200beveryone \\<@\u200b123\\> \\#room')
    expect(harmless('https://x.example [a](b)')).toBe('https\\://x.example \\[a\\]\\(b\\)')
    expect(harmless('one\n# two\u202e')).toBe('one \\# two')
    expect(harmless('grey-wagtail-2')).toBe('grey-wagtail-2')
  })

  it('leave no bare mark of formatting, whatever they are', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (words) => {
        const bare = harmless(words).replace(/\\[\\*_~`|<>[\]()#:]/g, '')
        expect(bare).not.toMatch(/[\\*_~`|<>[\]()#:\n\r]|@(?!\u200b)/)
      }),
    )
  })
})

describe('the roll-call', () => {
  const clients = (n: number, given: Partial<WeekFacts>): WeekFacts[] =>
    Array.from({ length: n }, (_, i) => week({ ref: `bird-${i + 10}`, ...given }))

  it('has the counts on top, then names by group', () => {
    const quiet = { rule: 'quiet', level: 'note', day: '2026-03-10', figures: {}, source: '' } as const
    const all = [
      week({ ref: 'dipper', silentDays: 5, flags: [quiet] }),
      week({ ref: 'wren', proposal: 'advance', ladder: 'glide' }),
      week({ ref: 'teal' }),
      week({ ref: 'curlew', standing: 'paused' }),
    ]
    expect(rollCallText(rollCall(all), '2026-03-15')).toEqual([
      [
        '**Roll-call, Sun 15 Mar** · 4 clients: 1 needs you, 1 can move on, 2 besides',
        '**Needs you**',
        '• dipper: no reply for 5 days',
        '**Can move on**',
        '• wren (Glide)',
        '**The others**',
        '• curlew (paused), teal',
      ].join('\n'),
    ])
  })

  it('is one line for a practice without clients', () => {
    expect(rollCallText(rollCall([]), '2026-03-15')).toEqual([
      '**Roll-call, Sun 15 Mar** · no clients at present',
    ])
  })

  it('splits for 80 clients, naming each once, each page within the limit', () => {
    const all = [
      ...clients(40, { alertOpen: true, urgentOpen: true, standing: 'locked' }),
      ...clients(40, { flags: [] }).map((facts, n) => ({ ...facts, ref: `fowl-${n + 10}` })),
    ]
    const pages = rollCallText(rollCall(all), '2026-03-15')
    expect(pages.length).toBeGreaterThan(1)
    for (const page of pages) expect(page.length).toBeLessThanOrEqual(1800)
    const names = pages.join('\n').match(/(bird|fowl)-\d\d/g)!
    expect(names).toHaveLength(80)
    expect(new Set(names).size).toBe(80)
    expect(pages.join('\n')).not.toMatch(NEVER)
  })
})

describe('the alt text of the picture', () => {
  it.each(Object.keys(CASES))('fits and has no forbidden word: %s', (name) => {
    const alt = digestAlt(CASES[name]!)
    expect(alt.length).toBeLessThanOrEqual(1000)
    expect(alt).not.toMatch(NEVER)
  })

  it('holds every day of a month: reach, pain, sessions, gaps, what was filled in later, marks', () => {
    expect(digestAlt(CASES.improving!).split('\n')).toEqual([
      'heron, Mon 16 Feb to Sun 15 Mar: centralising, toward the back.',
      'Baseline: calf, pain 6.',
      'Day by day, - is no answer.',
      'From 16 Feb: calf x2 foot calf - calf x2; pain 6 7 6 5 - 6 5; sessions 2/2 x2 1/2 2/2 - 2/2 x2.',
      'From 23 Feb: calf x2 - x2 knee calf knee; pain 6 5 - x2 5 4 5; sessions 2/2 x2 - x2 2/2 x3.',
      'From 2 Mar: knee x3 thigh - thigh x2; pain 4 5 4 x2 - 3 4; sessions 2/2 x2 1/2 2/2 - 2/2 x2; filled in later 4 Mar.',
      'From 9 Mar: thigh x2 buttock thigh x2 buttock -; pain 3 4 3 5 3 x2 -; sessions 2/2 x3 0/2 2/2 x2 -.',
      'Marks: 6 Mar gate to the next rung met; 7 Mar advanced: Bend back 1 to 2; 11 Mar pain and reach better by what matters.',
    ])
  })

  it('tells the oldest weeks in short where all days are too many, the newest in full', () => {
    const lines = digestAlt(CASES.six!).split('\n')
    expect(lines.filter((line) => line.startsWith('From '))).toHaveLength(6)
    expect(lines).toContain(
      'From 16 Feb in short: calf, furthest foot; pain 6, worst 8; sessions 9/12; replies 6/7.',
    )
    expect(lines.find((line) => line.startsWith('From 23 Mar'))).toContain('pain 2 1 2 - 1 x2 0')
  })
})
