import type { EdgeName, Job, PanelName } from '../../../src/core';
import { cornerPoint, frontAt, rimAt, type TrueAlcove, trueEdge } from '../../simulate';

/** A place on a cut edge, and where the edge truly lies there, mm. */
export interface EdgePlace {
  panel: PanelName;
  edge: EdgeName;
  along: number;
  at: number;
}

/** Places compared on each edge. */
const PLACES = 9;

/** Places along every edge that is cut to the alcove. */
export function edgePlaces(alcove: TrueAlcove, job: Pick<Job, 'fit' | 'rim'>): EdgePlace[] {
  const foot = rimAt(alcove, 0, 0);
  const upright: [number, number] = [foot, job.fit.top];
  const across: [number, number] = [cornerPoint(alcove, 'left', 0)[0] + 10, cornerPoint(alcove, 'right', 0)[0] - 10];
  const out = (side: 'left' | 'right'): [number, number] => [10, frontAt(alcove, side, 0) - 10];
  const edges: { panel: PanelName; edge: EdgeName; stretch: [number, number] }[] = [
    { panel: 'back', edge: 'left', stretch: upright },
    { panel: 'back', edge: 'right', stretch: upright },
    { panel: 'back', edge: 'bottom', stretch: across },
    ...(['left', 'right'] as const).flatMap((panel) => [
      { panel, edge: 'back' as const, stretch: upright },
      { panel, edge: 'front' as const, stretch: upright },
      { panel, edge: 'bottom' as const, stretch: out(panel) },
    ]),
  ];
  return edges.flatMap(({ panel, edge, stretch: [from, to] }) =>
    Array.from({ length: PLACES }, (_, i) => {
      const along = from + ((to - from) * i) / (PLACES - 1);
      return { panel, edge, along, at: trueEdge(alcove, job, panel, edge, along) };
    }),
  );
}

/**
 * Distances of cut edges from where they truly lie, mm. A side panel is slid along its wall to where its back and front
 * edges fit best, as a person would.
 * @param cut where each place was cut
 */
export function misfitsOf(places: readonly EdgePlace[], cut: readonly number[]): number[] {
  const off = cut.map((at, i) => at - places[i]!.at);
  const slide = (side: PanelName): number => {
    const upright = off.filter((_, i) => slides(places[i]!) && places[i]!.panel === side);
    return (Math.max(...upright) + Math.min(...upright)) / 2;
  };
  const slid = { back: 0, left: slide('left'), right: slide('right') };
  return off.map((each, i) => Math.abs(slides(places[i]!) ? each - slid[places[i]!.panel] : each));
}

const slides = ({ panel, edge }: EdgePlace): boolean => panel !== 'back' && edge !== 'bottom';
