import { type BuiltRectangle, constrainedGuillotine } from '../guillotine';
import { type Blank, inParts } from './blank';
import { areaOf, cutAway, type Region } from './region';
import type { PlacedPiece } from './sheetLayout';

/** Blanks placed in regions, and what is left of the regions. */
export interface Placement {
  placed: (PlacedPiece & { region: number })[];
  free: Region[][];
  left: Blank[];
}

/** What differs by less, mm, is alike: the last bits of a computation decide nothing. */
const HAIR = 1e-3;
/** A hidden strip is made up of at most this many lengths. */
const MOST_PARTS = 4;

/**
 * Puts blanks into regions by guillotine cuts: longest first, each where it leaves the narrowest strip beside it. What
 * stays out is parted where it may be; then an exact search fills one region after another, and the better of the two
 * stands.
 */
export function place(blanks: readonly Blank[], regions: readonly Region[], { kerf, margin }: Cuts): Placement {
  let quick = placeLongestFirst(blanks, regions, kerf);
  for (let parts = 2; parts <= MOST_PARTS && quick.left.some(({ mayPart }) => mayPart); parts++) {
    const out = new Set(quick.left.map(({ piece }) => piece));
    const parted = blanks.flatMap((blank) =>
      blank.mayPart && out.has(blank.piece) ? inParts(blank, parts, margin) : [blank],
    );
    const next = placeLongestFirst(parted, regions, kerf);
    if (total(next.left) < total(quick.left)) quick = next;
  }
  if (quick.left.length === 0) return quick;
  const exact = fillOneByOne(blanks, regions, kerf);
  return total(exact.left) < total(quick.left) ? exact : quick;
}

/** Width of a saw cut and margin around a blank, mm. */
export interface Cuts {
  kerf: number;
  margin: number;
}

const total = (blanks: readonly Blank[]): number => blanks.reduce((sum, blank) => sum + areaOf(blank), 0);

function placeLongestFirst(blanks: readonly Blank[], regions: readonly Region[], kerf: number): Placement {
  const free = regions.map((region) => [region]);
  const placement: Placement = { placed: [], free, left: [] };
  const order = [...blanks].sort((a, b) => Math.max(b.width, b.height) - Math.max(a.width, a.height));
  for (const blank of order) {
    const fits = free.flatMap((list, region) =>
      list.flatMap((room, k) =>
        waysOf(blank, kerf)
          .filter((way) => way.width <= room.width && way.height <= room.height)
          .map((way) => ({ region, k, room, way, spare: Math.min(room.width - way.width, room.height - way.height) })),
      ),
    );
    if (fits.length === 0) {
      placement.left.push(blank);
      continue;
    }
    const { region, k, room, way } = fits.reduce((best, fit) => (fit.spare < best.spare - HAIR ? fit : best));
    free[region]!.splice(k, 1, ...cutAway(room, way.width, way.height));
    placement.placed.push({ region, ...laid(blank, room, way, kerf) });
  }
  return placement;
}

interface Way {
  width: number;
  height: number;
  turned: boolean;
}

/** The ways a blank may lie, a saw cut wider and higher. */
function waysOf({ width, height, mayTurn }: Blank, kerf: number): Way[] {
  const upright = { width: width + kerf, height: height + kerf, turned: false };
  return mayTurn ? [upright, { width: upright.height, height: upright.width, turned: true }] : [upright];
}

const laid = ({ piece, part }: Blank, { x, y }: Region, { width, height, turned }: Way, kerf: number): PlacedPiece => ({
  piece,
  x,
  y,
  width: width - kerf,
  height: height - kerf,
  turned,
  part,
});

/** So many blanks at a time are placed exactly; the search doubles with each. */
const EXACT_BLANKS = 6;
/** Tenths of a millimetre: blanks are rounded up to them and regions down. */
const UNITS = 10;

function fillOneByOne(blanks: readonly Blank[], regions: readonly Region[], kerf: number): Placement {
  const placement: Placement = { placed: [], free: regions.map((region) => [region]), left: [...blanks] };
  const order = regions.map((_, i) => i).sort((a, b) => areaOf(regions[b]!) - areaOf(regions[a]!));
  for (const i of order) {
    const region = regions[i]!;
    const best = fillRegion(placement.left, region, kerf);
    if (best === null) continue;
    const free: Region[] = [];
    const placed: PlacedPiece[] = [];
    takeApart(best.built, best.ways, region, kerf, placed, free);
    placement.free[i] = free;
    placement.placed.push(...placed.map((piece) => ({ ...piece, region: i })));
    placement.left = placement.left.filter(({ piece }) => !placed.some((each) => each.piece === piece));
  }
  return withRest(placement, kerf);
}

/** What the exact search left out goes, longest first, where it still fits. */
function withRest(placement: Placement, kerf: number): Placement {
  const regions = placement.free.flatMap((list, region) => list.map((room) => ({ region, room })));
  const rest = placeLongestFirst(
    placement.left,
    regions.map(({ room }) => room),
    kerf,
  );
  return {
    placed: [...placement.placed, ...rest.placed.map((piece) => ({ ...piece, region: regions[piece.region]!.region }))],
    free: placement.free.map((_, i) => rest.free.flatMap((list, k) => (regions[k]!.region === i ? list : []))),
    left: rest.left,
  };
}

interface Filled {
  built: BuiltRectangle;
  ways: { blank: Blank; way: Way }[];
}

/** The blanks of greatest total area that guillotine cuts get from one region; null where none fits. */
export function fillRegion(blanks: readonly Blank[], region: Region, kerf: number): Filled | null {
  const fits = (way: Way): boolean => way.width <= region.width && way.height <= region.height;
  const chosen = blanks
    .filter((blank) => waysOf(blank, kerf).some(fits))
    .sort((a, b) => areaOf(b) - areaOf(a))
    .slice(0, EXACT_BLANKS);
  const ways = chosen.flatMap((blank) => waysOf(blank, kerf).map((way) => ({ blank, way })));
  if (ways.length === 0) return null;
  const { best } = constrainedGuillotine(
    ways.map(({ blank, way }) => ({
      width: Math.ceil(UNITS * way.width - 1e-6),
      height: Math.ceil(UNITS * way.height - 1e-6),
      value: areaOf(blank),
      most: 1,
      group: chosen.indexOf(blank),
    })),
    Math.floor(UNITS * region.width + 1e-6),
    Math.floor(UNITS * region.height + 1e-6),
  );
  return best === null ? null : { built: best, ways };
}

/** Places of the blanks in a filled region, and what is cut away around them. */
export function takeApart(
  built: BuiltRectangle,
  ways: Filled['ways'],
  region: Region,
  kerf: number,
  placed: PlacedPiece[],
  free: Region[],
): void {
  const [width, height] = [built.width / UNITS, built.height / UNITS];
  free.push(...cutAway(region, width, height));
  const own = { x: region.x, y: region.y, width, height };
  if ('kind' in built.build) {
    const { blank, way } = ways[built.build.kind]!;
    placed.push(laid(blank, own, way, kerf));
    return;
  }
  const { joined, first, second } = built.build;
  if (joined === 'across') {
    const cut = first.width / UNITS;
    takeApart(first, ways, { ...own, width: cut }, kerf, placed, free);
    takeApart(second, ways, { ...own, x: own.x + cut, width: width - cut }, kerf, placed, free);
  } else {
    const cut = first.height / UNITS;
    takeApart(first, ways, { ...own, height: cut }, kerf, placed, free);
    takeApart(second, ways, { ...own, y: own.y + cut, height: height - cut }, kerf, placed, free);
  }
}
