interface Entry {
  readonly at: Date
  readonly rank: number
  readonly seq: number
  run(): Promise<void>
}

/** What people still have to do, in order of time, then rank, then as it was written down. */
export class Agenda {
  private entries: Entry[] = []
  private seq = 0

  add(at: Date, rank: number, run: () => Promise<void>): void {
    this.seq += 1
    this.entries.push({ at, rank, seq: this.seq, run })
  }

  get next(): Date | null {
    return this.first()?.at ?? null
  }

  /** Takes out the first entry that has come due; null where there is none. */
  take(now: Date): Entry | null {
    const first = this.first()
    if (!first || first.at > now) return null
    this.entries = this.entries.filter((entry) => entry !== first)
    return first
  }

  private first(): Entry | null {
    return this.entries.reduce<Entry | null>((best, one) => (best && before(best, one) ? best : one), null)
  }
}

const before = (a: Entry, b: Entry): boolean =>
  a.at.getTime() - b.at.getTime() < 0 ||
  (a.at.getTime() === b.at.getTime() && (a.rank < b.rank || (a.rank === b.rank && a.seq < b.seq)))
