import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { loadScenario } from '../../../src/rehearsal/scenario/index.ts'

/**
 * The stages of a client's way, each with what shows in a scenario that it works. The scenarios are played through
 * the real chat client against the stand-in, and held to what they expect, in tests/outside/platform-schemas.test.ts.
 */
const STAGES: [stage: string, file: string, wanted: object, says?: string][] = [
  ['1 set up', 'demo', { to: 'coach', kind: 'roll-call' }],
  ['2 enrol', 'end-of-the-way', { to: 'coach', about: 'plover' }, 'said no to checking in'],
  ['3 screen', 'course-of-heron', { to: 'client:heron' }, 'As soon as your doctor has agreed'],
  ['4 plan', 'course-of-heron', { to: 'client:heron', kind: 'plan' }, 'Stop at once'],
  [
    '5 daily check-in',
    'en-espanol',
    { to: 'client:vencejo', kind: 'receipt' },
    '1 sesión, pantorrilla, dolor 5',
  ],
  ['6 watch', 'demo', { to: 'alerts', kind: 'alert', about: 'dipper' }],
  ['7 decide', 'demo', { to: 'client:heron', kind: 'decision' }, 'from tomorrow'],
  ['8 weekly digest', 'demo', { to: 'coach', kind: 'digest', about: 'heron' }, 'Proposal: advance'],
  ['9 go quiet and come back', 'goes-quiet', { to: 'client:curlew', kind: 'nudge' }],
  ['10 clear', 'demo', { to: 'client:dipper', kind: 'cleared' }],
  [
    '11 return to lifting',
    'course-of-heron',
    { to: 'client:heron', kind: 'decision' },
    'Hinge, step by step',
  ],
  ['12 plateau and refer', 'course-of-heron', { to: 'coach', kind: 'report', about: 'heron' }],
  ['13 discharge', 'end-of-the-way', { to: 'client:heron', kind: 'discharge' }, 'four weeks from now'],
  ['14 questions and cover', 'end-of-the-way', { to: 'client:heron' }, 'Your coach answers'],
  ['15 own your data', 'course-of-heron', { to: 'client:heron' }, 'erased'],
]

describe('every stage of a client’s way', () => {
  it.each(STAGES)('%s is shown by scenarios/%s.yaml', (_, file, wanted, says) => {
    const path = fileURLToPath(new URL(`../../../scenarios/${file}.yaml`, import.meta.url))
    const script = loadScenario(`${file}.yaml`, readFileSync(path, 'utf8'))
    const found = script.expectations.filter(
      (one) =>
        one.of === 'messages' &&
        one.count !== 0 &&
        Object.entries(wanted).every(([key, value]) => Reflect.get(one, key) === value) &&
        (says === undefined || one.says?.source.includes(says)),
    )
    expect(found.length).toBeGreaterThan(0)
  })
})
