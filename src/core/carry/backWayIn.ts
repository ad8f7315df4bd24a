import type { Matrix } from 'ml-matrix';
import type { Alcove } from '../alcove';
import type { Job } from '../job-file';
import { DEGREES_PER_RADIAN } from '../length';
import type { Panel, Problem } from '../panel';
import { bowFor } from './bowFor';
import { acrossClearance, type Clearance, fits, isDoubtful, tighter, uprightClearance } from './clearanceOf';
import { edgesPass } from './edgesPass';
import { findTilt, type Tilt } from './findTilt';
import { type Laid, posesOf } from './poses';
import type { WayIn } from './report';
import type { Section } from './section';
import { frontOf, levelSections, plumbSections, sizeOf } from './sheetSections';
import { pivotOf, roomHome, type Sweep, sweep } from './sweep';
import { tooHigh, tooWide } from './tooLittle';

/** A tilt is worth its trouble from so much more room than straight in, mm (common practice, no source). */
const WORTH = 0.2;
/** Room that a bow leaves on each side, mm, where the panel has as much in its place. */
const BOWED_ROOM = 1;

/** How the back panel, cut to the back wall, gets past the side walls, over the rim and under what hangs over it. */
export function backWayIn(
  alcove: Alcove,
  seats: Alcove,
  covariance: Matrix,
  job: Job,
  panel: Panel,
): { way: WayIn; problems: Problem[] } {
  const levels = levelSections(alcove, seats, job, panel);
  const plumbs = plumbSections(alcove, seats, job, panel);
  const ends = levels.flatMap(({ low, high }) => [low!.end, high!.end]);
  const front = Math.max(frontOf(alcove), job.rim.width, ...ends);
  const reach = Math.max(front - Math.min(...levels.map(({ back }) => back)), 1);
  const across = sweep(levels, panel.thickness, 0, 'low', reach);
  const upright = sweep(plumbs, panel.thickness, 0, 'low', reach);
  const ofAcross = (way: Sweep) => acrossClearance(way, levels, alcove, covariance);
  const ofUpright = (way: Sweep) =>
    uprightClearance(way, (section, depth) => [plumbs[section]!.at, depth], alcove, covariance, job);
  const [straight, under] = [ofAcross(across), ofUpright(upright)];
  const lift = Math.max(0, ...upright.stations.map(({ shift }) => shift));

  const way = (kind: WayIn['way'], free: Clearance, more: Partial<WayIn> = {}): WayIn => ({
    panel: 'back',
    way: kind,
    ...free,
    doubtful: isDoubtful(free),
    tightest: { height: levels[across.low.section]!.at, depth: across.low.depth },
    straight: tighter(straight, under),
    tilt: null,
    bow: null,
    lift,
    reach: 0,
    poses: [],
    ...more,
  });
  const level = (words: Laid['words'], bow: WayIn['bow'] = null): Laid => ({
    axis: 'y',
    place: (x, z) => [x, 0, z],
    lift,
    words,
    bow,
  });

  if (!fits(under)) return underneath();
  const home = roomHome(levels, panel.thickness);
  const tilt = fits(straight) && !isDoubtful(straight) ? null : findTilt(levels, panel.thickness, home, reach);
  const tilted = tilt && ofAcross(tilt.way);
  const worth = tilted !== null && (tilted.clearance ?? 0) > (straight.clearance ?? 0) + WORTH;
  if (fits(straight) && !worth) {
    const words = { start: 'out in front', in: 'at the wall', home: 'in its place' };
    const poses = posesOf(across.stations, pivotOf(levels, 'low'), level(words));
    return { way: way('straight', tighter(straight, under), { poses }), problems: [] };
  }
  if (tilt && tilted && fits(tilted)) {
    const first = tilt.first === 'low' ? 'left' : 'right';
    return {
      way: way('tilted', tighter(tilted, under), {
        tilt: { about: 'upright', first, angle: tilt.angle * DEGREES_PER_RADIAN },
        reach: standsOut(tilt, levels, front),
        tightest: { height: levels[tilt.way.low.section]!.at, depth: tilt.way.low.depth },
        poses: posesOf(tilt.way.stations, pivotOf(levels, tilt.first), level(turnedWords(first))),
      }),
      problems: [],
    };
  }
  const left = Math.min(Math.max(home, 0), BOWED_ROOM);
  const bow = bowFor(job.bedding, panel, sizeOf(panel), 2 * (left - (straight.clearance ?? 0)));
  if (bow && bow.strain <= bow.limit && home >= 0) {
    const words = { start: 'bowed, out in front', in: 'both edges in their corners', home: 'pressed flat' };
    const poses = posesOf(across.stations, pivotOf(levels, 'low'), level(words, bow));
    return { way: way('bowed', { clearance: left, sd: straight.sd }, { bow, poses }), problems: [] };
  }
  return { way: way('blocked', straight, { bow }), problems: home < 0 ? [] : [tooWide(straight, bow)] };

  /** Turned about a level line, where something hangs too low for going straight in. */
  function underneath(): { way: WayIn; problems: Problem[] } {
    const homeUpright = roomHome(plumbs, panel.thickness);
    const tilt = findTilt(plumbs, panel.thickness, homeUpright, reach);
    const free = ofUpright(tilt.way);
    const pivot = pivotOf(plumbs, tilt.first);
    const beside = edgesPass(alcove, panel, tilt.way.stations, pivot);
    if (!fits(free) || beside < 0) {
      return { way: way('blocked', under), problems: homeUpright < 0 ? [] : [tooHigh('back', under)] };
    }
    const first = tilt.first === 'low' ? 'bottom' : 'top';
    const laid: Laid = { axis: 'x', place: (y, z) => [0, y, z], lift: 0, words: turnedWords(first) };
    return {
      way: way('tilted', tighter(free, { clearance: beside, sd: straight.sd }), {
        tilt: { about: 'level', first, angle: tilt.angle * DEGREES_PER_RADIAN },
        reach: standsOut(tilt, plumbs, front),
        tightest: { height: alcove.rim.value(0, tilt.way.low.depth), depth: tilt.way.low.depth },
        poses: posesOf(tilt.way.stations, pivot, laid),
      }),
      problems: [],
    };
  }
}

const turnedWords = (first: string): Laid['words'] => ({
  start: `${first} edge first`,
  in: `${first} edge home`,
  home: 'swung home',
});

/** How far the far end stands out before the front edge when the leading end is home, mm. */
function standsOut({ angle }: Tilt, sections: readonly Section[], front: number): number {
  const width =
    Math.max(...sections.map(({ sheet }) => sheet.to)) - Math.min(...sections.map(({ sheet }) => sheet.from));
  const back = Math.min(...sections.map(({ back }) => back));
  return Math.max(0, back + width * Math.sin(angle) - front);
}
