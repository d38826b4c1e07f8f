import { expect, it } from 'vitest'
import { readLadderFile } from '../../src/domain/ladder/ladder-file.ts'
import { setOwnLadders } from '../../src/text/own-ladders.ts'
import { BALANCE } from '../domain/ladder/balance.ts'
import { openPractice } from './practice.ts'

const read = readLadderFile(BALANCE)
if (!read.ok) throw new Error('the ladder of the tests cannot be read')

it('a practice’s own ladder is planned, shown with its cautions, decided on, and known to the keeper', async () => {
  const practice = await openPractice('2026-03-02', {}, read.ladders)
  try {
    await practice.enrol('heron', {}, {}, 'extension:1 balance:1')
    const today = await practice.command('today', {}, 'heron')
    expect(today?.drills).toEqual(['extension:1', 'balance:1'])
    expect(today?.text).toContain('Stand near a wall.\nStop if the leg gives way.')
    await practice.command('decide', { client: 'heron', do: 'advance', ladder: 'balance' })
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
