import type { Matrix } from 'ml-matrix';
import { type Alcove, towardsRoom } from '../alcove';
import { constant } from '../dual';
import type { Job, Side } from '../job-file';
import { DEGREES_PER_RADIAN } from '../length';
import { contourRise, type Panel, type Problem } from '../panel';
import { extent } from '../range';
import { lengthSd } from '../survey';
import { type Clearance, fits, isDoubtful, tighter, uprightClearance } from './clearanceOf';
import { findTilt } from './findTilt';
import { type Laid, posesOf } from './poses';
import type { Pose, WayIn } from './report';
import { endsAt, frontOf, sideSections, sizeOf } from './sheetSections';
import { pivotOf, roomHome, type Sweep, sweep } from './sweep';
import { throughOpening } from './throughOpening';
import { tooHigh } from './tooLittle';

/** Heights, and places across, at which a panel is held against the back panel's face. */
const PLACES = 8;
/** A panel is shown this far out before the alcove, mm. */
const OUT = 100;

/**
 * How a side panel gets in once the back panel is set: edge on through the opening, leaned over where a header hangs
 * lower than it is high, then from the alcove's middle to its wall, past the back panel's face, over the rim and under
 * the ceiling.
 * @param beside what the panel set before it on the other side takes of the alcove's width, mm
 */
export function sideWayIn(
  alcove: Alcove,
  seats: Alcove,
  covariance: Matrix,
  job: Job,
  panel: Panel,
  side: Side,
  beside: number,
): { way: WayIn; problems: Problem[] } {
  const inward = towardsRoom(side);
  const sections = sideSections(alcove, seats, job, panel, side);
  const { low } = sections[0]!;
  const across = low!.step * (low!.values.length - 1);
  const of = (way: Sweep): Clearance =>
    uprightClearance(way, (section, depth) => [inward * depth, sections[section]!.at], alcove, covariance, job);
  const straight = sweep(sections, panel.thickness, 0, 'low', across);
  const free = of(straight);
  const home = roomHome(sections, panel.thickness);
  const tilt = fits(free) ? null : findTilt(sections, panel.thickness, home, across);
  const chosen = tilt?.way ?? straight;
  const inside = tilt ? of(tilt.way) : free;
  const lean = underHeader(alcove, job, panel, beside);
  const all = lean ? tighter(inside, lean) : inside;
  const passes = fits(all);

  const first = tilt?.first === 'high' ? 'top' : 'bottom';
  const laid: Laid = {
    axis: 'z',
    place: (y, depth) => [inward * depth, y, 0],
    lift: 0,
    words: {
      start: tilt ? `${first} edge first` : 'upright in the middle of the alcove',
      in: tilt ? `${first} edge at the wall` : 'at the wall',
      home: tilt ? 'tipped up against the wall' : 'in its place',
    },
  };
  const out = outward(seats, job, panel, side, across);
  const within = posesOf(chosen.stations, pivotOf(sections, tilt?.first ?? 'low'), laid)
    .slice(1)
    .map((pose, k, every): Pose => {
      const last = k === every.length - 1;
      const step = k === 0 ? laid.words.start : pose.step;
      return { ...pose, step, shift: [pose.shift[0], pose.shift[1], pose.shift[2] + (last ? 0 : out)] };
    });
  const leaned = lean && lean.lean > 0 ? lean.lean * DEGREES_PER_RADIAN : 0;
  const tilted: WayIn['tilt'] = tilt
    ? { about: 'level', first, angle: tilt.angle * DEGREES_PER_RADIAN }
    : leaned > 0
      ? { about: 'level', first: 'bottom', angle: leaned }
      : null;
  return {
    way: {
      panel: side,
      way: !passes ? 'blocked' : tilted ? 'tilted' : 'straight',
      ...all,
      doubtful: isDoubtful(all),
      tightest:
        all.clearance === null
          ? null
          : {
              height: alcove.rim.value(inward * chosen.low.depth, sections[chosen.low.section]!.at),
              depth: sections[chosen.low.section]!.at,
            },
      straight: free,
      tilt: tilted,
      bow: null,
      lift: Math.max(0, ...straight.stations.map(({ shift }) => shift)),
      reach: 0,
      poses: passes ? [...fromRoom(within[0]!, panel, inward, frontOf(alcove), leaned), ...within] : [],
    },
    problems: passes || home < 0 ? [] : [tooHigh(side, all)],
  };
}

/** Room under a header for the panel, leaned over as far as it must be; null where there is no header. */
function underHeader(
  alcove: Alcove,
  { carrying: { header }, rim, fit, instruments }: Job,
  panel: Panel,
  beside: number,
): (Clearance & { lean: number }) | null {
  if (header === undefined) return null;
  const z = Math.min(frontOf(alcove), rim.width);
  const sill = alcove.rim.value(0, z) + Math.max(0, contourRise(rim, constant(z)).value);
  const { height } = sizeOf(panel);
  const middle = (sill + header) / 2;
  const wide = alcove.right.value(z, middle) - alcove.left.value(z, middle) - beside - 2 * fit.bed;
  const { clearance, lean } = throughOpening(height, panel.thickness, wide, header - sill);
  return { clearance, lean, sd: lengthSd(header - sill, 'tape', instruments) / 2 };
}

/** How far out the panel is kept until it is at its wall, so that its back edge clears the back panel's face, mm. */
function outward(seats: Alcove, { fit }: Job, panel: Panel, side: Side, across: number): number {
  const inward = towardsRoom(side);
  const face = fit.bed + panel.thickness;
  const [bottom, top] = extent(panel.outline, 1);
  let most = 0;
  for (let j = 1; j < PLACES; j++) {
    const v = bottom + ((top - bottom) * j) / PLACES;
    const { from } = endsAt(panel, 1, v);
    const start = seats[side].value(from, v);
    for (let k = 0; k <= PLACES; k++) {
      const x = start + (inward * across * k) / PLACES;
      most = Math.max(most, seats.back.value(x, v) + face - from);
    }
  }
  return most;
}

/** From out in the room to the alcove's middle, leaned over under a header. */
function fromRoom(inside: Pose, panel: Panel, inward: 1 | -1, front: number, leaned: number): Pose[] {
  const [inner] = extent(panel.outline, 0);
  const out = front - inner + OUT;
  const angle = leaned > 0 ? inward * leaned : inside.angle;
  const pose = (step: string, z: number): Pose => ({
    ...inside,
    step,
    angle,
    shift: [inside.shift[0], inside.shift[1], inside.shift[2] + z],
  });
  return leaned > 0 ? [pose('out in front', out), pose('inside', 0)] : [pose('out in front', out)];
}
