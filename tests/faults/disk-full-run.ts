import { dayOnFullDisk, smallDisk } from './disk-full.ts'

/** `npx tsx tests/faults/disk-full-run.ts [DAYS] [CHECK-INS]`: days on a full disk, each second one with a kill. */
const days = Number(process.argv[2] ?? 10)
const checkIns = Number(process.argv[3] ?? 20)
let lost = 0
const found = []
for (let day = 0; day < days; day += 1) {
  const disk = smallDisk(8)
  if (!disk) {
    console.error('This user may not mount a small disk: run it as one who may, such as root in a container.')
    process.exit(1)
  }
  const outcome = await dayOnFullDisk(disk, checkIns, day % 2 === 1)
  lost += outcome.said - outcome.applied
  found.push({ day, killed: day % 2 === 1, ...outcome, openSigns: outcome.openSigns.join(' ') })
  disk.unmount()
}
console.table(found)
console.log(`${days} days on a full disk, ${days * (checkIns + 1)} messages, ${lost} lost`)
process.exit(lost === 0 ? 0 : 1)
