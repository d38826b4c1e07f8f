const BITS = 32

/** A set of classes, one bit each: a message makes several of them, and they are asked at every word. */
export class ClassSet {
  /** Those of the first 64, which are the cues, are at hand; all others are looked up. */
  private first = 0
  private second = 0
  private readonly others: number[]

  /** @param size how many classes there are */
  constructor(size: number) {
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
    addBits(ids, this.first, 0)
    addBits(ids, this.second, BITS)
    for (let block = 2; block < this.others.length; block++) addBits(ids, this.others[block]!, block * BITS)
    return ids
  }
}

/** Adds the numbers of the bits that are set, counted from the first. */
function addBits(ids: number[], bits: number, first: number): void {
  for (let left = bits; left !== 0; left &= left - 1) ids.push(first + 31 - Math.clz32(left & -left))
}
