import { statfsSync } from 'node:fs'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

// what takes longest by itself, longest first: begun last, it would keep one worker busy while the other has nothing
const LONGEST = [
  ...['outside/platform-schemas', 'end-to-end/service', 'faults/workers', 'faults/workers-lead'],
  ...['rehearsal/page/looks', 'rehearsal/page/by-keyboard', 'rehearsal/player/zones', 'faults/faults'],
  ...['faults/kills', 'security/matrix', 'security/hostile', 'store/erased', 'fuzz/fuzz'],
].map((name) => `/tests/${name}.test.ts`)

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification): number => {
      const at = LONGEST.findIndex((name) => moduleId.endsWith(name))
      return at < 0 ? LONGEST.length : at
    }
    return (await super.sort(files)).sort((a, b) => place(a) - place(b))
  }
}

/** A file system in memory, where there is one with room: nothing is tested by waiting for a disk at each commit. */
function inMemory(): { readonly TMPDIR?: string } {
  const [place, room] = ['/dev/shm', 4 * 1024 ** 3]
  try {
    const { bavail, bsize } = statfsSync(place)
    return process.env.TMPDIR || bavail * bsize < room
      ? {}
      : { TMPDIR: `${place}/ebbline-tests-${process.pid}` }
  } catch {
    return {}
  }
}

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // the machines have two cores, and the end-to-end tests start real servers and databases
    maxWorkers: 2,
    // plays that wait in real time (a slow line, a chat that is down) do so together
    maxConcurrency: 3,
    // a file keeps nothing in its modules that another could meet, and all that is loaded stays warm: a third less work
    isolate: false,
    sequence: { sequencer: LongestFirst },
    env: inMemory(),
    globalSetup: 'tests/place.ts',
    setupFiles: 'tests/laws.ts',
  },
})
