/** A run of joints that is gunned and tooled before it skins over. */
export interface JointBatch {
  /** ids of joints, in order; a joint longer than a batch is split over several */
  parts: { id: string; from: number; to: number }[];
  /** mm */
  length: number;
}

/**
 * Joints in batches no longer than can be tooled before the first of it skins over.
 * @param joints lengths in mm
 * @param longest mm
 */
export function jointBatches(joints: readonly { id: string; length: number }[], longest: number): JointBatch[] {
  const batches: JointBatch[] = [];
  let open: JointBatch = { parts: [], length: 0 };
  const close = (): void => {
    if (open.parts.length > 0) batches.push(open);
    open = { parts: [], length: 0 };
  };
  for (const { id, length } of joints) {
    // A joint that fits a batch of its own is not split: a joint is better tooled in one go.
    if (length <= longest && open.length + length > longest) close();
    for (let from = 0; from < length; ) {
      if (open.length >= longest - 1e-9) close();
      const to = Math.min(length, from + longest - open.length);
      open.parts.push({ id, from, to });
      open.length += to - from;
      from = to;
    }
  }
  close();
  return batches;
}
