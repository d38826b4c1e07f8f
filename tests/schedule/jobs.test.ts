import { expect, it } from 'vitest'
import { openJobs } from '../../src/schedule/jobs.ts'
import { onServers } from '../store/databases.ts'

onServers('jobs', (address) => {
  it('asked for twice wait once, are counted up to a number, and are handed over', async () => {
    const jobs = await openJobs(await address(), 'test', (error) => {
      throw error
    })
    const tasks = ['heron', 'dipper', 'curlew'].map((key, n) => ({ key, priority: 4 - n }))
    await jobs.send('deliver', tasks)
    await jobs.send('deliver', tasks)
    expect(await jobs.waiting('deliver', 10)).toBe(3)
    expect(await jobs.waiting('deliver', 2)).toBe(2)
    expect(await jobs.waiting('due', 2)).toBe(0)
    const taken: string[] = []
    await jobs.run('deliver', async (keys) => {
      taken.push(...keys)
      return []
    })
    expect(taken.sort()).toEqual(['curlew', 'dipper', 'heron'])
    expect(await jobs.waiting('deliver', 10)).toBe(0)
    await jobs.close()
  })
})
