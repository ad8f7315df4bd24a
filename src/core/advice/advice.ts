/** Something to think of that does not keep the job from being built. */
export interface Advice {
  /** as in a problem: `panels.right.holes.valve` */
  where: string;
  /** a sentence without its figure */
  what: string;
  /** false where the job as it stands does not do what is advised */
  met: boolean;
  /** how far from what is advised, mm; null where that is no length */
  howMuch: number | null;
  /** published source, or `common practice, no source` */
  source: string;
}
