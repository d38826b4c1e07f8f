import { expect, it } from 'vitest'
import { addDays } from '../../src/domain/day.ts'
import { onBothDatabases } from './databases.ts'
import { at, checkIn, client, ground, outcome, practice, put, samples } from './samples.ts'

const LATEST = '2026-06-30'
const back = (n: number): string => addDays(LATEST, -n)
const noon = (day: string): Date => at(`${day}T12:00:00Z`)

onBothDatabases('client file', (bench) => {
  it('holds the last hundred days of check-ins in order, up to the latest', async () => {
    const { store } = await bench.open()
    await store.transaction((tx) => tx.apply(ground('heron')))
    const days = [100, 99, 3, 50, 0, 150].map(back)
    const changes = days.map((day) => put('checkIn', checkIn('c:heron', day)))
    await store.transaction((tx) => tx.apply(outcome(changes)))
    const file = await store.transaction((tx) => tx.client('c:heron'))
    expect(file?.checkIns.map((row) => row.day)).toEqual([99, 50, 3, 0].map(back))
  })

  it('leaves out what ended long ago, and keeps what is open however old', async () => {
    const { store } = await bench.open()
    const sign = (id: string, day: string, state: 'open' | 'cleared', ended: string | null) =>
      put('sign', { ...samples.sign, id, day, at: noon(day), state, endedAt: ended ? noon(ended) : null })
    const hold = (id: string, day: string, ended: string | null) =>
      put('hold', { ...samples.hold, id, day, at: noon(day), endedAt: ended ? noon(ended) : null })
    const flag = (id: string, day: string, closed: string | null) =>
      put('flag', { ...samples.flag, id, day, openedAt: noon(day), closedAt: closed ? noon(closed) : null })
    await store.transaction((tx) => tx.apply(ground('heron')))
    await store.transaction((tx) =>
      tx.apply(
        outcome([
          put('checkIn', checkIn('c:heron', LATEST)),
          sign('old open', back(200), 'open', null),
          sign('old, ended lately', back(200), 'cleared', back(20)),
          sign('old', back(200), 'cleared', back(190)),
          sign('new', back(59), 'cleared', back(58)),
          hold('old open', back(200), null),
          hold('old', back(200), back(190)),
          hold('new', back(59), back(58)),
          flag('old open', back(200), null),
          flag('old', back(200), back(190)),
          flag('new', back(59), back(58)),
          put('decision', { ...samples.decision, id: 'old', day: back(70), at: noon(back(70)) }),
          put('decision', { ...samples.decision, id: 'new', day: back(60), at: noon(back(60)) }),
          put('alert', { ...samples.alert, id: 'old', openedAt: noon(back(90)), closedAt: noon(back(89)) }),
          put('alert', { ...samples.alert, id: 'old open', openedAt: noon(back(90)), closedAt: null }),
        ]),
      ),
    )
    const file = await store.transaction((tx) => tx.client('c:heron'))
    const ids = (rows: readonly { id: string }[] | undefined) => rows?.map((row) => row.id)
    expect(ids(file?.signs)).toEqual(['old open', 'old, ended lately', 'new'])
    expect(ids(file?.holds)).toEqual(['old open', 'new'])
    expect(ids(file?.flags)).toEqual(['old open', 'new'])
    expect(ids(file?.decisions)).toEqual(['new'])
    expect(ids(file?.alerts)).toEqual(['old open'])
  })

  it('holds the latest consent, screening and plan, and every change of rung', async () => {
    const { store } = await bench.open()
    const [first, last] = [noon(back(9)), noon(back(2))]
    await store.transaction((tx) => tx.apply(ground('heron')))
    await store.transaction((tx) =>
      tx.apply(
        outcome([
          put('consent', { ...samples.consent, id: 'b', at: first, answer: 'no' }),
          put('consent', { ...samples.consent, id: 'a', at: last }),
          put('screening', { ...samples.screening, id: 'b', startedAt: first }),
          put('screening', { ...samples.screening, id: 'a', startedAt: last }),
          put('plan', { ...samples.plan, id: 'b', at: first }),
          put('plan', { ...samples.plan, id: 'a', at: last, sessions: 3 }),
          put('rung', { ...samples.rung, id: 'b', at: first }),
          put('rung', { ...samples.rung, id: 'a', at: last }),
        ]),
      ),
    )
    const file = await store.transaction((tx) => tx.client('c:heron'))
    expect([file?.consent?.id, file?.screening?.id, file?.plan?.id]).toEqual(['a', 'a', 'a'])
    expect(file?.rungs.map((row) => row.id)).toEqual(['b', 'a'])
  })

  it('is found by alias, by person and in the roster', async () => {
    const { store } = await bench.open()
    const second = { ...practice, id: 'p:gig', guild: '200' }
    await store.transaction((tx) => tx.apply(ground('plover', 'curlew', 'dipper', 'wren')))
    await store.transaction((tx) =>
      tx.apply(
        outcome([
          put('practice', second),
          put('client', client('wren', { stage: 'left' })),
          put('client', client('dipper', { stage: 'discharged' })),
          put(
            'client',
            client('heron', {
              id: 'c:gig',
              practiceId: second.id,
              user: 'user-plover',
              createdAt: noon(LATEST),
            }),
          ),
          put('checkIn', checkIn('c:plover', LATEST, { pain: 1 })),
          put('checkIn', checkIn('c:curlew', back(300), { pain: 2 })),
          put('checkIn', checkIn('c:curlew', back(250), { pain: 3 })),
        ]),
      ),
    )
    const roster = await store.transaction((tx) => tx.roster(practice.id))
    expect(roster.map((file) => file.client.ref)).toEqual(['curlew', 'dipper', 'plover'])
    expect(roster.map((file) => file.checkIns.map((row) => row.pain))).toEqual([[2, 3], [], [1]])
    const files = await store.transaction((tx) => tx.clientsOfUser('user-plover'))
    expect(files.map((file) => [file.client.id, file.practice.id])).toEqual([
      ['c:gig', second.id],
      ['c:plover', practice.id],
    ])
    expect((await store.transaction((tx) => tx.clientByRef(practice.id, 'wren')))?.client.id).toBe('c:wren')
    expect(await store.transaction((tx) => tx.clientByRef(practice.id, 'heron'))).toBeNull()
    expect(await store.transaction((tx) => tx.client('c:nobody'))).toBeNull()
    expect((await store.transaction((tx) => tx.practiceOfGuild('200')))?.id).toBe(second.id)
  })

  it('comes for a roster of more clients than one statement could name', async () => {
    const { store } = await bench.open()
    const refs = Array.from({ length: 450 }, (_, n) => `bird-${String(n).padStart(4, '0')}`)
    await store.transaction((tx) => tx.apply(ground(...refs)))
    const roster = await store.transaction((tx) => tx.roster(practice.id))
    expect(roster.map((file) => file.client.ref)).toEqual(refs)
  })
})
