/** Something that goes wrong with requests that fit `match`. */
export interface Fault {
  /** Tried on `METHOD /path`, the path without `/api/v10` and query. */
  match: RegExp
  /** How many requests it hits; once where left out. */
  times?: number
  /** Answers with this status instead of doing the work. */
  status?: number
  headers?: Record<string, string>
  body?: unknown
  /** Waits so long, in real milliseconds, before it answers. */
  delayMs?: number
  /** Cuts the connection instead of answering. */
  drop?: boolean
  /** Does the work first, then goes wrong: the answer is lost, not the message. */
  afterApply?: boolean
}

/** Keeps the faults that are still to strike. */
export class Faults {
  private open: (Fault & { left: number })[] = []

  add(fault: Fault): void {
    this.open.push({ ...fault, left: fault.times ?? 1 })
  }

  clear(): void {
    this.open = []
  }

  /** The fault that this request meets, if any; counts it. */
  take(request: string): Fault | null {
    const fault = this.open.find((f) => f.match.test(request))
    if (!fault) return null
    fault.left -= 1
    if (fault.left <= 0) this.open = this.open.filter((f) => f !== fault)
    return fault
  }
}
