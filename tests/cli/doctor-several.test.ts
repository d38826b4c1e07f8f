import { expect, it } from 'vitest'
import { shown } from '../../src/cli/doctor/line.ts'
import { severalLines } from '../../src/cli/doctor/several.ts'
import { openJobs } from '../../src/schedule/jobs.ts'
import { takeLead } from '../../src/store/leader.ts'
import { openStore } from '../../src/store/open.ts'
import { workerNamed } from '../../src/store/processes.ts'
import { onServers } from '../store/databases.ts'
import { ground, outcome, posting, put, samples } from '../store/samples.ts'

const ignore = (): void => {}
const LEAD = { waiting: ignore, lost: ignore }

onServers('ebb doctor on PostgreSQL', (address) => {
  const says = async (url: string, mustRun = false) => (await severalLines(url, mustRun)).map(shown)

  it('counts who has the gateway, who stands by and who works beside it', async () => {
    const url = await address()
    await (await openStore(url, null)).close()
    expect(await says(url)).toEqual(['ok: processes: none is up; the bot is started with npm start'])
    expect(await says(url, true)).toEqual([
      'not ok: processes: none is up; the bot is started with npm start',
    ])
    const jobs = await openJobs(url, workerNamed(), ignore)
    expect((await says(url))[0]).toMatch(/^not ok: processes: 1 works, but none has the gateway/)
    const lead = await takeLead(url, 'here', LEAD)
    const next = takeLead(url, 'here', LEAD)
    await expect
      .poll(async () => (await says(url))[0], { timeout: 10_000 })
      .toBe('ok: processes: one has the gateway, 1 stands by, 1 works beside it')
    await lead.release()
    await (await next).release()
    await jobs.close()
  })

  it('tells of what failed at every try and still waits, queue by queue, and names nobody', async () => {
    const url = await address()
    const { store, outbox, close } = await openStore(url, null)
    const due = {
      ...samples.due,
      id: 'prompt/c:heron',
      clientId: 'c:heron',
      at: new Date(Date.now() - 60_000),
    }
    const message = posting('heron 1', { notBefore: new Date(Date.now() - 60_000), clientId: 'c:heron' })
    await store.transaction((tx) => tx.apply(ground('heron')))
    await store.transaction((tx) => tx.apply(outcome([put('due', due)], [message])))
    const jobs = await openJobs(url, 'test', ignore)
    const dead = (queue: string, key: string) =>
      jobs.query(`INSERT INTO pgboss.job ("name", "data") VALUES ($1, $2)`, [queue, JSON.stringify({ key })])
    await dead('due-dead', due.id)
    await dead('due-dead', due.id)
    await dead('due-dead', 'prompt/c:gone')
    await dead('deliver-dead', 'c:heron')
    const [, dues, deliveries] = await says(url)
    expect(dues).toMatch(
      /^not ok: jobs of what is due: 1 failed at every try, the first at 20.*“something failed”/,
    )
    expect(deliveries).toMatch(/^not ok: jobs of delivery: 1 failed at every try/)
    expect(`${dues}${deliveries}`).not.toContain('heron')

    // a later try went well
    const [row] = await outbox.claimLines(['c:heron'], new Date(), 1)
    await outbox.sent(row!.id, new Date(), '1', '2')
    await store.transaction((tx) => tx.apply(outcome([{ drop: 'due', id: due.id }], [])))
    expect((await says(url)).slice(1)).toEqual([
      'ok: jobs of what is due: none is put aside',
      'ok: jobs of delivery: none is put aside',
    ])
    await jobs.close()
    await close()
  })
})
