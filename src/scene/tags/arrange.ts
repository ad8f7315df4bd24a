/** A tag on the screen: its middle and its size, px. */
export interface TagBox {
  x: number;
  y: number;
  width: number;
  height: number;
}

const space = 2;
/** Places tried for a tag, in heights up and down from where it belongs. */
const shifts = [0, -1, 1, -2, 2];

const overlap = (a: TagBox, b: TagBox): boolean =>
  Math.abs(a.x - b.x) * 2 < a.width + b.width + space && Math.abs(a.y - b.y) * 2 < a.height + b.height + space;

/**
 * Moves tags off one another, off what is in the way, and into the frame, the first ones first. Null for one that finds
 * no room.
 * @param wanted null for a tag that is out of view
 */
export function arranged(
  wanted: readonly (TagBox | null)[],
  frame: { width: number; height: number },
  inTheWay: readonly TagBox[] = [],
): (TagBox | null)[] {
  const placed = [...inTheWay];
  return wanted.map((box) => {
    if (!box) return null;
    const x = Math.min(Math.max(box.x, box.width / 2 + space), frame.width - box.width / 2 - space);
    const found = shifts
      .map((shift) => ({ ...box, x, y: box.y + shift * (box.height + space) }))
      .find(
        (tried) =>
          tried.y > box.height / 2 &&
          tried.y < frame.height - box.height / 2 &&
          !placed.some((other) => overlap(tried, other)),
      );
    if (found) placed.push(found);
    return found ?? null;
  });
}
