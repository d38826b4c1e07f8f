import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // the machines have two cores, and the end-to-end tests start real servers and databases
    maxWorkers: 2,
    // a file keeps nothing in its modules that another could meet, and all that is loaded stays warm: a third less work
    isolate: false,
  },
})
