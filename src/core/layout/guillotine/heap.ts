/** Binary heap: `pop` gives the entry that is ahead of all others. */
export class Heap<T> {
  private readonly entries: T[] = [];

  constructor(private readonly isAhead: (a: T, b: T) => boolean) {}

  push(entry: T): void {
    const { entries } = this;
    let place = entries.push(entry) - 1;
    while (place > 0) {
      const parent = (place - 1) >> 1;
      if (!this.isAhead(entry, entries[parent]!)) break;
      entries[place] = entries[parent]!;
      place = parent;
    }
    entries[place] = entry;
  }

  pop(): T | undefined {
    const { entries } = this;
    const first = entries[0];
    const last = entries.pop();
    if (last === undefined || entries.length === 0) return first;
    let place = 0;
    for (;;) {
      let child = 2 * place + 1;
      if (child >= entries.length) break;
      if (child + 1 < entries.length && this.isAhead(entries[child + 1]!, entries[child]!)) child++;
      if (!this.isAhead(entries[child]!, last)) break;
      entries[place] = entries[child]!;
      place = child;
    }
    entries[place] = last;
    return first;
  }
}
