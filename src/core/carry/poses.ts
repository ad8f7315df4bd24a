import { DEGREES_PER_RADIAN } from '../length';
import type { Vec3 } from '../piece';
import { PLANES } from './movePoint';
import type { Pose, WayIn } from './report';
import type { Pivot, Station } from './sweep';

/** A panel is shown this far before the first place that bounds it, mm. */
const OUT = 350;
/** How a section's coordinates lie in the alcove, and what is done besides the motion within it. */
export interface Laid {
  axis: Pose['axis'];
  /** of a point with these coordinates in the section */
  place: (across: number, depth: number) => Vec3;
  /** added to every pose but the last */
  lift: number;
  /** what the steps are called: at the start, at the end of the way in, in its place */
  words: { start: string; in: string; home: string };
  bow?: WayIn['bow'];
}

/** The stations of a sweep as poses, with one before them further out and the last in its place. */
export function posesOf(stations: readonly Station[], pivot: Pivot, { axis, place, lift, words, bow }: Laid): Pose[] {
  const origin = place(0, 0);
  const centre = place(pivot.across, pivot.depth);
  // Turning from across to depth is positive where the end that goes first is the low one.
  const sense = handOf(place, axis) * (pivot.first === 'low' ? 1 : -1);
  const bent = { sagitta: bow?.sagitta ?? 0, shortening: bow?.shortening ?? 0 };
  const pose = (step: string, { angle, advance, shift }: Station, lifted: number): Pose => {
    const to = place(shift, advance);
    return {
      step,
      axis,
      pivot: centre,
      angle: sense * angle * DEGREES_PER_RADIAN,
      shift: [to[0] - origin[0], to[1] - origin[1] + lifted, to[2] - origin[2]],
      bow: bent,
    };
  };
  const [first] = stations as [Station];
  const inside = stations.findIndex(({ advance }) => advance === 0);
  const last = stations.length - 1;
  const on = stations.slice(0, last).map((station, k) => pose(k === inside ? words.in : '', station, lift));
  const before = { ...first, advance: first.advance + OUT };
  // What has no turn to swing back is in at once, and then let down, or let go of.
  const rest = inside === last ? [pose(words.in, { ...stations[last]!, shift: 0 }, lift)] : [];
  const home = { ...pose(words.home, { angle: 0, advance: 0, shift: 0 }, 0), bow: { sagitta: 0, shortening: 0 } };
  return [pose(words.start, before, lift), ...on, ...rest, home];
}

/** +1 where turning from across to depth is what `movePoint` takes as positive about the axis. */
function handOf(place: Laid['place'], axis: Pose['axis']): 1 | -1 {
  const [a, b] = [place(1, 0), place(0, 1)];
  const [first, second] = PLANES[axis];
  const from = place(0, 0);
  return (a[first] - from[first]) * (b[second] - from[second]) < 0 ? -1 : 1;
}
