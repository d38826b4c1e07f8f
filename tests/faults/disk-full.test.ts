import { expect, it } from 'vitest'
import { dayOnFullDisk, smallDisk } from './disk-full.ts'

const disk = smallDisk(8)
if (!disk) console.warn('a full disk is not tried: this user may not mount a small one')

it.skipIf(!disk)(
  'loses nothing that was answered on a disk that is full, though it be killed there',
  async () => {
    try {
      const { wasFull, said, applied, urgentReplies, alerts, openSigns, ms } = await dayOnFullDisk(
        disk!,
        3,
        true,
      )
      expect(wasFull).toBe(true)
      expect(applied).toBe(said)
      expect([urgentReplies, alerts]).toEqual([1, 1])
      expect(openSigns).toContain('bladder-change')
      expect(ms).toBeLessThan(3_000)
    } finally {
      disk!.unmount()
    }
  },
  90_000,
)
