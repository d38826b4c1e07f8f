import { describe, expect, it } from 'vitest'
import { SIGN_IDS } from '../../src/domain/signs/catalogue.ts'
import { BARRIERS, hintedSign } from '../../src/engine/check-in/asking.ts'
import { en } from '../../src/text/en/index.ts'
import { gradeLevel, mean } from './reading-level.ts'

const { client, screening } = en
const MOST = 600
const REASSURES =
  /\b(you are safe|is safe|all clear|nothing serious|no need to worry|don't worry|harmless)\b/i
const DIAGNOSES = /(?<!(did|do) )\b(you have (a|an|the) |this is (a|an) (disc|sciatica|cauda)|you suffer)/i
const EXERCISE = /press-up|forearm|slider|breathing|rock-back|hip lift|hinge|stretch/i

/** Sentences as a client meets them on ordinary and on bad days, with typical figures filled in. */
const said: Record<string, string> = {
  ...Object.fromEntries(
    Object.entries(client).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  ),
  understood: client.understood(['2 sessions, calf, pain 4']),
  soon: client.soon([en.signs['night-pain'].short]),
  eased: client.eased('extension', 2),
  rests: client.rests('extension'),
  restOver: client.restOver(['extension', 'glide']),
  undone: client.undone(['extension']),
  advanced: client.advanced('extension', 2),
  easedByCoach: client.easedByCoach('extension', 1),
  cleared: client.cleared('08:00', true),
  left: client.left(365, false),
  leftAsked: client.left(365, true),
  resumed: client.resumed('08:00'),
  planSet: client.planSet('2026-03-02', '08:00'),
}
const urgent: Record<string, string> = {
  emergency: client.emergency({ emergency: '112', cauda: true }),
  emergencyOther: client.emergency({ emergency: null, cauda: false }),
  sameDay: client.sameDay({ emergency: '112', advice: '808 24 24 24', outOfHours: true }),
  sameDayByDay: client.sameDay({ emergency: null, advice: null, outOfHours: false }),
  selfHarm: client.selfHarm({ emergency: '112', crisis: null }),
  strangerUrgent: client.strangerUrgent,
  leftUrgent: client.leftUrgent,
  stillLocked: client.stillLocked,
  drillsLocked: client.drillsLocked,
  drillsWait: client.drillsWait,
  changesLater: client.changesLater,
  morning: client.morning,
  onTheWay: client.onTheWay,
  untaken: client.untaken,
  takenUp: client.takenUp,
  dischargedLocked: en.course.dischargedLocked('You began at calf and are now at back.', null),
  whichSign: client.whichSign,
  ...Object.fromEntries(SIGN_IDS.map((id) => [`hinted ${id}`, hintedSign(en, '2026-03-02', id, '112').text])),
}

describe('what a client reads', () => {
  it.each(Object.entries({ ...said, ...urgent }))(
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

  it.each(
    Object.entries(urgent).filter(([name]) => /^(emergency|sameDay|stranger|left|selfHarm)/.test(name)),
  )('says what to do in its first sentences, and not to wait: %s', (_, text) => {
    expect(text.slice(0, 330)).toMatch(/call|seen by a doctor/i)
    expect(text).toMatch(/not wait|do not have to carry/i)
  })

  it('is read at the sixth grade or below on average, urgent words too', () => {
    const questions = Object.values(screening.question)
    expect(mean([...Object.values(said), ...questions].map(gradeLevel))).toBeLessThanOrEqual(6)
    expect(mean(Object.values(urgent).map(gradeLevel))).toBeLessThanOrEqual(6)
  })

  it('has words for every barrier', () => {
    for (const barrier of BARRIERS) expect(client.barrier[barrier]).not.toBe('')
  })
})
