import { describe, expect, it } from 'vitest'
import { en } from '../../src/text/en/index.ts'
import { gradeLevel, mean } from './reading-level.ts'

const { course, client } = en
const MOST = 600
const REASSURES =
  /\b(you are safe|is safe|all clear|nothing serious|no need to worry|don't worry|harmless)\b/i
const EXERCISE = /press-up|forearm|slider|breathing|rock-back|hip lift|hinge|stretch/i

const facts = {
  weeks: 14,
  began: 'calf, pain 6',
  now: 'back, pain 1',
  activities: [
    { name: 'rowing on the lake', from: 7, now: 2 },
    { name: 'sitting at a desk', from: 5, now: 1 },
    { name: 'lifting the boat', from: 9, now: 4 },
  ],
  percent: 86,
}
const summary = course.summary(facts)
const said: Record<string, string> = {
  ...Object.fromEntries(
    Object.entries(course).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  ),
  welcome: client.welcome('Harbour Boathouse Rowing and Strength', 365),
  sexualNoted: course.sexualNoted(false),
  askActivities: course.askActivities(facts.activities.map(({ name }) => name)),
  activitiesNoted: course.activitiesNoted(facts.activities),
  dischargedLocked: course.dischargedLocked(summary, null),
  dischargedAndAsked: `${course.discharged(summary, true)}\n${course.askRemind}`,
  remindYes: course.remindNoted(true),
  erased: course.erased(214, '2026-12-25'),
}

describe('what a client reads from the first yes to the last word', () => {
  it.each(Object.entries(said))('is short and promises nothing: %s', (_, text) => {
    expect(text.length).toBeLessThanOrEqual(MOST)
    expect(text).not.toMatch(REASSURES)
  })

  it('is read at the sixth grade or below, each of the longer texts by itself', () => {
    const longer = Object.entries(said).filter(([, text]) => text.length > 100)
    const hard = longer.filter(([, text]) => gradeLevel(text) > 6).map(([name]) => name)
    expect(hard).toEqual([])
    expect(mean(Object.values(said).map(gradeLevel))).toBeLessThanOrEqual(6)
  })

  it('tells in the invitation what it is, is not, what is kept, who sees it, how to leave', () => {
    for (const part of [
      'What it is:',
      'What it is not:',
      '365 days',
      'coach’s team',
      'out of our reach',
      'leave',
    ])
      expect(said.welcome).toContain(part)
  })

  it.each(['comeBack', 'comeBackThanks', 'comeBackWorseThanks', 'dischargedLocked', 'regionAway'])(
    'names no exercise: %s',
    (name) => {
      expect(said[name]).not.toMatch(EXERCISE)
    },
  )
})
