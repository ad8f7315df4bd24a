import { type Job, WALLS } from '../job-file';
import { RADIANS_PER_DEGREE } from '../length';
import type { Panel, PanelName, Problem } from '../panel';
import { lengthSd } from '../survey';
import { placeWords } from './placeWords';
import type { Carried, Passage } from './report';
import { longestRoundCorner } from './roundCorner';
import { sizeOf } from './sheetSections';
import { throughOpening } from './throughOpening';

/** Each sheet as bought and each panel as cut, past every place on the way of which the sizes are given. */
export function carriedSheets(job: Job, panels: Record<PanelName, Panel>): { carried: Carried[]; problems: Problem[] } {
  const carried = WALLS.flatMap((panel): Carried[] => {
    const cut = sizeOf(panels[panel].flat);
    return (['sheet', 'panel'] as const).map((as): Carried => {
      const { width, height } = as === 'sheet' ? job.sheets[panel] : cut;
      return { panel, as, width, height, passages: passagesOf(job, width, height) };
    });
  });
  const problems = carried.flatMap(({ panel, as, passages }): Problem[] => {
    const stuck = passages.find(({ passes }) => !passes);
    if (as === 'sheet' || stuck === undefined) return [];
    return [
      {
        where: `panels.${panel}`,
        what:
          stuck.place === 'standing'
            ? 'the panel cannot be stood upright under the ceiling; lower its top, or cut it at a level seam'
            : `the panel, cut, does not pass ${placeWords[stuck.place]}; bring it another way, or cut it at a seam`,
        howMuch: -stuck.clearance,
      },
    ];
  });
  return { carried, problems };
}

function passagesOf({ carrying, fit, instruments, levelAboveFloor }: Job, width: number, height: number): Passage[] {
  const [long, short] = [Math.max(width, height), Math.min(width, height)];
  const thickness = fit.thickness;
  const { door, corridor, stair, ceiling } = carrying;
  const sd = (length: number): number => lengthSd(length, 'tape', instruments);
  const passages: Passage[] = [];
  const add = (place: Passage['place'], ways: Omit<Passage, 'place' | 'passes'>[]): void => {
    const best =
      ways.find(({ clearance }) => clearance >= 0) ?? ways.reduce((a, b) => (b.clearance > a.clearance ? b : a));
    passages.push({ place, passes: best.clearance >= 0, ...best });
  };
  const opening = (wide: number, high: number): Omit<Passage, 'place' | 'passes'> => {
    const { clearance, lean } = throughOpening(short, thickness, wide, high);
    return { clearance: 2 * clearance, sd: sd(high), edge: 'long', lean: lean / RADIANS_PER_DEGREE };
  };
  /** Level round a corner: on the long edge, or on the short edge where that is known to be low enough. */
  const turned = (longest: number, high: number | undefined, wide: number) => [
    ...(high === undefined || short <= high ? [onEdge('long', longest - long, wide)] : []),
    ...(high !== undefined && long <= high ? [onEdge('short', longest - short, wide)] : []),
    ...(high !== undefined && short > high ? [onEdge('long', high - short, high)] : []),
  ];
  const onEdge = (edge: Passage['edge'], clearance: number, size: number) => ({
    clearance,
    sd: sd(size),
    edge,
    lean: 0,
  });

  if (door.width !== undefined && door.height !== undefined) add('door', [opening(door.width, door.height)]);
  if (corridor.before !== undefined && corridor.after !== undefined) {
    const longest = longestRoundCorner(corridor.before, corridor.after, corridor.turn * RADIANS_PER_DEGREE, thickness);
    add('corridor', turned(longest, corridor.height, Math.max(corridor.before, corridor.after)));
  }
  if (stair.width !== undefined && stair.headroom !== undefined) {
    const pitch = stair.pitch * RADIANS_PER_DEGREE;
    // Along the slope headroom counts square to it; stood up, a sheet's width rises with the stair.
    const upright = stair.headroom - long - short * Math.tan(pitch);
    add('stair', [
      opening(stair.width, stair.headroom * Math.cos(pitch)),
      { clearance: upright, sd: sd(stair.headroom), edge: 'short', lean: 0 },
    ]);
  }
  if (stair.width !== undefined && stair.landing !== undefined && stair.turn !== 'none') {
    const quarter = longestRoundCorner(stair.width, stair.landing, Math.PI / 2, thickness);
    // A half turn is taken as two quarter turns, the sheet along the landing between them.
    const longest = stair.turn === 'half' ? Math.min(quarter, 2 * stair.width) : quarter;
    add('landing', turned(longest, stair.headroom, Math.max(stair.width, stair.landing)));
  }
  if (ceiling !== undefined) {
    const room = levelAboveFloor + ceiling;
    // Stood up from lying on an edge, the diagonal of its section goes past the ceiling.
    add('standing', [
      {
        clearance: room - Math.hypot(height, thickness),
        sd: sd(room),
        edge: height >= width ? 'short' : 'long',
        lean: 0,
      },
    ]);
  }
  return passages;
}
