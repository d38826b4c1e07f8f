/** Bits of a number that stay a small integer. */
const BITS = 32

/** A set of classes, one bit each: a message makes several of them, and they are asked at every word. */
export class ClassSet {
  private readonly bits: number[]

  /** @param size how many classes there are */
  constructor(private readonly size: number) {
    this.bits = new Array<number>(Math.ceil(size / BITS)).fill(0)
  }

  add(id: number): void {
    this.bits[id >> 5]! |= 1 << id
  }

  has(id: number): boolean {
    return (this.bits[id >> 5]! & (1 << id)) !== 0
  }

  hasAny(ids: readonly number[]): boolean {
    for (const id of ids) if (this.has(id)) return true
    return false
  }

  /** Its classes by their numbers, lowest first. */
  ids(): number[] {
    const ids: number[] = []
    for (let id = 0; id < this.size; id++) {
      if (this.bits[id >> 5] === 0) id |= BITS - 1
      else if (this.has(id)) ids.push(id)
    }
    return ids
  }
}
