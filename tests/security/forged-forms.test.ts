import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { FormFilled } from '../../src/engine/event.ts'
import { type Forging, line, list, openForging } from './forging.ts'

let on: Forging
beforeAll(async () => {
  on = await openForging()
}, 30_000)
afterAll(() => on.close())
beforeEach(() => on.begin())
afterEach(() => expect(on.stage.platform.violations).toEqual([]))

describe('a form', () => {
  const full = [list('pain', '4'), list('signs', 'a'), line('note', 'a word'), line('day', 'today')]
  const filled = (): unknown => (on.stage.heard[0] as FormFilled | undefined)?.filled

  it.each([
    ['under the id of its button', '.1', full],
    ['of a button that opens none', '.f0', full],
    ['of a list', '.p', full],
    ['of a button that is not there', '.f9', full],
    ['with a value that was never offered', '.f1', [list('pain', '11'), ...full.slice(1)]],
    ['with two where one may be chosen', '.f1', [list('pain', '4', '5'), ...full.slice(1)]],
    ['with one twice', '.f1', [list('signs', 'a', 'a'), line('day', 'today')]],
    ['with words for a list', '.f1', [line('signs', 'a'), line('day', 'today')]],
    ['with a list for words', '.f1', [list('note', 'a'), line('day', 'today')]],
  ])('%s is not taken', async (_, part, fields) => {
    await on.refused(on.send(on.toHeron.id + part, fields))
  })

  it('of somebody else, or sent in another channel, is not taken', async () => {
    await on.refused({ ...on.send(`${on.toHeron.id}.f1`, full), user: on.stage.coach.id })
    on.posted.length = 0
    await on.refused(on.send(`${on.toCoaches.id}.f1`, full, { ...on.coaches, channelId: on.elsewhere }))
  })

  it('with a field that it does not have is taken without it', async () => {
    await on.forge(
      on.send(`${on.toHeron.id}.f1`, [...full, line('client', 'osprey'), list('__proto__', 'x')]),
    )
    expect(filled()).toEqual({ pain: '4', signs: ['a'], note: 'a word', day: 'today' })
  })

  it('with fields missing is taken as if they were left empty: a sign in the others must not be lost', async () => {
    await on.forge(on.send(`${on.toHeron.id}.f1`, [list('signs', 'a')]))
    expect(filled()).toEqual({ signs: ['a'] })
  })

  it('with more words than fit is cut to what the form takes', async () => {
    await on.forge(
      on.send(`${on.toHeron.id}.f1`, [line('note', 'x'.repeat(90_000)), line('day', 'y'.repeat(4_000))]),
    )
    expect(filled()).toEqual({ note: 'x'.repeat(2_000), day: 'y'.repeat(200) })
  })
})
