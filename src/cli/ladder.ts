import { readFileSync } from 'node:fs'
import { type OwnLadder, readLadderFile } from '../domain/ladder/ladder-file.ts'
import { faultLines } from '../own-ladders.ts'
import { drillText, STOP_RULE } from '../text/en/drills.ts'
import type { Io } from './io.ts'
import { unread } from './unread.ts'
import { orWrongUse } from './wrong-use.ts'

export const help = `Usage: ebb ladder FILE
Checks a practice's own ladders (YAML) and prints every drill as a client would read it. EBBLINE_LADDERS=FILE then
adds them to the eight of the house.

A file holds one ladder, or several under "ladders:":
  id: balance                # small letters, digits, hyphens; none of the eight of the house
  number: 9                  # 9 to 99; the lowest number advances first
  name: Stand steady
  rungs:                     # the easiest first; each needs the one before
    - name: Stand on one leg
      how: Hold on to a chair and lift one foot. Keep your hips level and breathe.
      dose: { reps: 3, hold: 20, ease: 10, sets: 1, times: 2 }   # hold and ease in seconds; times a day
      kit: [a firm chair]    # may be left out
      needs: [anchor-check]  # anchor-check with any band, coach-load where the coach names a load
      side: each             # none, sore, each
      least-days: 7          # may be left out
      cautions: Stand near a wall.
      stop-if: Stop if the leg gives way.

Exit status: 0 it can be used, 1 it has faults (each with its line), 2 wrong use.`

/** @throws Error in one sentence where the words typed cannot be used */
function pathOf([path, second]: string[]): string {
  if (path === undefined || second !== undefined || path.startsWith('-'))
    throw new Error('Name one ladder file.')
  return path
}

export async function run(args: string[], io: Io): Promise<number> {
  const path = orWrongUse(() => pathOf(args), io, `\n${help}`)
  if (path === null) return 2
  const text = textOf(path, io)
  if (text === null) return 2
  const read = readLadderFile(text)
  if (!read.ok) {
    for (const line of faultLines(path, read.errors)) io.err(line)
    return 1
  }
  for (const ladder of read.ladders) for (const line of shown(ladder)) await io.out(line)
  await io.out(STOP_RULE)
  return 0
}

function textOf(path: string, io: Io): string | null {
  try {
    return readFileSync(path, 'utf8')
  } catch (error) {
    io.err(unread('file', path, error))
    return null
  }
}

const shown = ({ ladder, name, prose }: OwnLadder): string[] => [
  `${name} (${ladder.id}, number ${ladder.number})`,
  ...ladder.rungs.flatMap((drill, n) => [
    '',
    `${n + 1}. ${drillText(drill, drill.dose.timesADay, null, prose[drill.id])}`,
  ]),
  '',
]
