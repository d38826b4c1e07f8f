const BITS = 32

/** A set of classes, one bit each: a message makes several of them, and they are asked at every word. */
export class ClassSet {
  /** Those of the first 64, which are the cues, are at hand; all others are looked up. */
  private first = 0
  private second = 0
  private readonly others: number[]

  /** @param size how many classes there are */
  constructor(private readonly size: number) {
    this.others = new Array<number>(Math.ceil(size / BITS)).fill(0)
  }

  add(id: number): void {
    if (id < BITS) this.first |= 1 << id
    else if (id < 2 * BITS) this.second |= 1 << id
    else this.others[id >> 5]! |= 1 << id
  }

  has(id: number): boolean {
    const bits = id < BITS ? this.first : id < 2 * BITS ? this.second : this.others[id >> 5]!
    return (bits & (1 << id)) !== 0
  }

  hasAny(ids: readonly number[]): boolean {
    for (const id of ids) if (this.has(id)) return true
    return false
  }

  /** Its classes by their numbers, lowest first. */
  ids(): number[] {
    const ids: number[] = []
    for (let id = 0; id < this.size; id++) {
      if (id >= 2 * BITS && this.others[id >> 5] === 0) id |= BITS - 1
      else if (this.has(id)) ids.push(id)
    }
    return ids
  }
}
