/** A way on which messages leave: one run at a time. */
export interface Lane {
  /** Runs the work; called meanwhile, it runs once more, and the caller waits with the others. */
  run(): Promise<void>
  isRunning(): boolean
  /** Somebody called since the present run of the work began. */
  isCalled(): boolean
  /** Resolves at the next call, or at once where there was one that nobody has looked at. */
  called(): Promise<void>
}

export function createLane(work: () => Promise<void>): Lane {
  let running: Promise<void> | null = null
  let again = false
  let wake: () => void = () => {}

  const go = async (): Promise<void> => {
    try {
      while (again) {
        again = false
        await work()
      }
    } finally {
      running = null
    }
  }

  return {
    isRunning: () => running !== null,
    isCalled: () => again,
    run() {
      again = true
      wake()
      running ??= go()
      return running
    },
    called() {
      if (!again)
        return new Promise((resolve) => {
          wake = resolve
        })
      again = false
      return Promise.resolve()
    },
  }
}
