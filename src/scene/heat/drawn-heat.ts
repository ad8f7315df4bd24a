import { type Job, type Result, type WallName, Z_95 } from '../../core';
import {
  type AlcoveShape,
  alcoveShape,
  type Box,
  boxOf,
  exaggerated,
  onWall,
  type RimSolid,
  rimSolid,
  type Vec3,
} from '../geometry';
import type { Tag } from '../tags';
import { type HeatMesh, heatMesh } from './heat-mesh';
import { type Reference, type Spot, type WallField, wallField } from './wall-field';

export interface HeatWall {
  name: WallName;
  field: WallField;
  mesh: HeatMesh;
}

/** All that the heat map draws, in the alcove's frame. */
export interface DrawnHeat {
  shape: AlcoveShape;
  place: (point: Vec3) => Vec3;
  box: Box;
  rim: RimSolid;
  walls: HeatWall[];
}

const names = ['back', 'left', 'right'] as const;

/** @param factor times further out of true than it is */
export function drawnHeat(result: Result, job: Job, reference: Reference, factor: number): DrawnHeat {
  const shape = alcoveShape(result);
  const place = exaggerated(shape, factor);
  return {
    shape,
    place,
    box: boxOf(shape, job),
    rim: rimSolid(shape, job.rim, place),
    walls: names.map((name) => {
      const field = wallField(result, name, reference);
      return { name, field, mesh: heatMesh(shape, name, field, place) };
    }),
  };
}

/** Lengths as a person reads them. */
export interface LengthWords {
  fine(mm: number): string;
  plusMinus(sd: number): string;
}

/** Where each wall stands out furthest and lies back furthest, with the figure and its ±. */
export function heatTags({ shape, place, walls }: DrawnHeat, lengths: LengthWords): Tag[] {
  return walls.flatMap(({ name, field }) => {
    const point = onWall(shape, name, 4);
    const tag = (end: string, { at, height, value, half }: Spot): Tag => ({
      key: `${name} ${end}`,
      kind: 'hole',
      text: `${signed(value, lengths)} ${lengths.plusMinus(half / Z_95)}${field.assumed ? ', assumed' : ''}`,
      at: place(point(inset(at, field.at), inset(height, field.height))),
    });
    return [tag('highest', field.highest), tag('lowest', field.lowest)];
  });
}

/** A deviation with its sign: + into the room. */
export function signed(value: number, { fine }: Pick<LengthWords, 'fine'>): string {
  const text = fine(Math.abs(value));
  return text === fine(0) ? text : `${value > 0 ? '+' : '−'}${text}`;
}

/** Keeps a tag off the very edge of its wall. */
function inset(value: number, [from, to]: readonly [number, number]): number {
  const margin = 0.06 * (to - from);
  return Math.min(Math.max(value, from + margin), to - margin);
}
