/** Numbers that look random and are the same for the same seed (mulberry32, public domain). */
export class Random {
  constructor(private state: number) {}

  /** At least 0, less than 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }
  below(count: number): number {
    return Math.floor(this.next() * count);
  }
  of<T>(list: readonly T[]): T {
    return list[this.below(list.length)]!;
  }
}
