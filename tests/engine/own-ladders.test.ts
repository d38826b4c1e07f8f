import { expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { readLadderFile } from '../../src/domain/ladder/ladder-file.ts'
import { createEngine } from '../../src/engine/engine.ts'
import { textsFor } from '../../src/text/index.ts'
import { setOwnLadders } from '../../src/text/own-ladders.ts'
import { BALANCE } from '../domain/ladder/balance.ts'
import { COACH, openPractice, person } from './practice.ts'

const read = readLadderFile(BALANCE)
if (!read.ok) throw new Error('the ladder of the tests cannot be read')

it('a practice’s own ladder is planned, shown with its cautions, decided on, and known to the keeper', async () => {
  const practice = await openPractice('2026-03-02', {}, read.ladders)
  try {
    await practice.enrol('heron', {}, {}, 'extension:1 balance:1')
    const today = await practice.command('today', {}, 'heron')
    expect(today?.drills).toEqual(['extension:1', 'balance:1'])
    expect(today?.text).toContain('Stand near a wall.\nStop if the leg gives way.')
    const asked = await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'balance' })
    expect(asked?.text).toMatch(/works with a band/)
    await practice.answerPress(asked, 'all-the-same')
    expect(practice.to('heron').at(-1)?.text).toContain('“Stand steady” is **Banded step**')
    expect(await practice.store.laddersInPlans()).toEqual([
      { ladder: 'balance', clients: 1 },
      { ladder: 'extension', clients: 1 },
    ])
  } finally {
    await practice.close()
    setOwnLadders([])
  }
})

it('a ladder taken away rests: its drills are shown to nobody, and /plan says so', async () => {
  const practice = await openPractice('2026-03-02', {}, read.ladders)
  try {
    await practice.enrol('heron', {}, {}, 'extension:1 balance:1')
    setOwnLadders([])
    const engine = createEngine({ store: practice.store.store, commands, textsFor })
    const at = new Date('2026-03-02T06:00:00Z')
    const command = {
      kind: 'command',
      id: 'later-1',
      actor: person('heron'),
      name: 'today',
      options: {},
    } as const
    expect((await engine.handle(command, at)).answer?.drills).toEqual(['extension:1'])
    const options = { client: 'heron', sessions: 2, ladders: 'extension:2' }
    const asked = await engine.handle({ ...command, id: 'later-2', actor: COACH, name: 'plan', options }, at)
    expect(asked.answer?.text).toMatch(/No longer among this practice’s ladders: “balance”.*it rests/)
  } finally {
    await practice.close()
  }
})
