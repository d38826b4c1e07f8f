/** Counts work that has begun and not ended. */
export interface InFlight {
  track<T>(work: Promise<T>): Promise<T>
  /** Resolves when nothing is under way. */
  idle(): Promise<void>
}

export function createInFlight(): InFlight {
  const running = new Set<Promise<unknown>>()
  return {
    track(work) {
      running.add(work)
      work.finally(() => running.delete(work)).catch(() => {})
      return work
    },
    async idle() {
      while (running.size > 0) await Promise.allSettled(running)
    },
  }
}

/** What the work gives, or `late` where it takes longer; the work goes on. */
export async function within<T, L>(work: Promise<T>, ms: number, late: L): Promise<T | L> {
  let timer: NodeJS.Timeout | undefined
  const over = new Promise<L>((resolve) => {
    timer = setTimeout(() => resolve(late), ms)
  })
  return Promise.race([work, over]).finally(() => clearTimeout(timer))
}
