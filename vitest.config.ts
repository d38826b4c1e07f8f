import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // what a file loads serves the next one too: nearly every test needs the same store, chat client and lexicons
    isolate: false,
    // the machines have two cores, and the end-to-end tests start real servers and databases
    maxWorkers: 2,
  },
})
