import type { WallName } from '../../core';
import { spaced } from '../../core';
import { type AlcoveShape, onWall, type Vec3 } from '../geometry';
import type { WallField } from './wall-field';

/** A plane through a wall: upright at a place along it, or level at a height. */
export interface Section {
  wall: WallName;
  cut: 'upright' | 'level';
  /** where between the wall's ends it lies, 0 to 1 */
  share: number;
}

/** Points of a section line and how the wall stands there. */
export interface SectionPoint {
  /** height of an upright section's point, place along the wall of a level one's, mm */
  along: number;
  value: number;
  /** 95 % half-width */
  half: number;
}

const POINTS = 65;

/** Place along the wall, or height, that a section lies at, mm. */
export const sectionPlace = ({ cut, share }: Omit<Section, 'wall'>, { at, height }: WallField): number => {
  const [from, to] = cut === 'upright' ? at : height;
  return from + share * (to - from);
};

/** The wall's line in a section, against the reference it deviates from. */
export function sectionProfile(section: Section, field: WallField): SectionPoint[] {
  const place = sectionPlace(section, field);
  const upright = section.cut === 'upright';
  const [from, to] = upright ? field.height : field.at;
  return spaced(from, to, POINTS).map((along) => {
    const [a, h] = upright ? [place, along] : [along, place];
    return { along, value: field.deviation(a, h), half: field.half(a, h) };
  });
}

/** A section's line as drawn on the wall. */
export function sectionLine(
  shape: AlcoveShape,
  section: Section,
  field: WallField,
  place: (point: Vec3) => Vec3,
): Vec3[] {
  const point = onWall(shape, section.wall, 3);
  const fixed = sectionPlace(section, field);
  const upright = section.cut === 'upright';
  const [from, to] = upright ? field.height : field.at;
  return spaced(from, to, POINTS).map((along) => place(upright ? point(fixed, along) : point(along, fixed)));
}

/** Where the handle of a section stands, in the alcove's frame: near the line's lower, or left, end. */
export function handlePlace(
  shape: AlcoveShape,
  section: Section,
  field: WallField,
  place: (point: Vec3) => Vec3,
): Vec3 {
  const line = sectionLine(shape, section, field, place);
  const nearStart = section.cut === 'upright' || section.wall !== 'left';
  return line[Math.round((nearStart ? 0.12 : 0.88) * (line.length - 1))]!;
}
