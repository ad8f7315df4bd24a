/** Things that are dear to make, each made once for all that use it and freed after the last. */
export class Shared<Thing extends { dispose(): void }> {
  private readonly held = new Map<string, { thing: Thing; users: number }>();

  /** The thing of this key, made where nobody has it; `release` gives it back, once however often it is called. */
  take(key: string, make: () => Thing): { thing: Thing; release(): void } {
    const entry = this.held.get(key) ?? { thing: make(), users: 0 };
    this.held.set(key, entry);
    entry.users += 1;
    let using = true;
    const release = () => {
      if (!using) return;
      using = false;
      entry.users -= 1;
      if (entry.users > 0) return;
      this.held.delete(key);
      entry.thing.dispose();
    };
    return { thing: entry.thing, release };
  }
}
