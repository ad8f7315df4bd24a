import { type WallName, Z_95 } from '../../core';
import { type Reference, type Section, type SectionPoint, sectionPlace, signed, type WallField } from '../../scene';
import type { Lengths } from '../parts';

export const referenceWords: readonly (readonly [Reference, string])[] = [
  ['plumb', 'Off plumb'],
  ['flat', 'Off flat'],
];

export const cutWords: readonly (readonly [Section['cut'], string])[] = [
  ['upright', 'Upright'],
  ['level', 'Level'],
];

export const wallWords: readonly (readonly [WallName, string])[] = [
  ['left', 'Left'],
  ['back', 'Back'],
  ['right', 'Right'],
];

/** What a section's line is drawn against. */
export const againstWords = (reference: Reference, cut: Section['cut']): string => {
  if (cut === 'level') return 'straight line';
  return reference === 'plumb' ? 'plumb line' : 'straight line';
};

/** Where a section lies: `12" right of the plumb line`, `24" above the level line`. */
export function placeWords(section: Section, field: WallField, lengths: Lengths): string {
  const place = sectionPlace(section, field);
  const far = lengths.text(Math.abs(place));
  if (section.cut === 'level') {
    return Math.abs(place) < 1 ? 'at the level line' : `${far} ${place > 0 ? 'above' : 'below'} the level line`;
  }
  if (section.wall !== 'back') return `${far} out from the back wall`;
  return Math.abs(place) < 1 ? 'at the plumb line' : `${far} ${place > 0 ? 'right' : 'left'} of the plumb line`;
}

/** A deviation with its ±, and what it means: `+3/16" ±1/32", into the room`. */
export function deviationWords({ value, half }: Pick<SectionPoint, 'value' | 'half'>, lengths: Lengths): string {
  const way = Math.abs(value) <= half ? '' : value > 0 ? ', into the room' : ', away from the room';
  return `${signed(value, lengths)} ${lengths.plusMinus(half / Z_95)}${way}`;
}

export interface Extremes {
  out: SectionPoint;
  back: SectionPoint;
}

export const extremesOf = (profile: readonly SectionPoint[]): Extremes => ({
  out: profile.reduce((best, point) => (point.value > best.value ? point : best)),
  back: profile.reduce((best, point) => (point.value < best.value ? point : best)),
});
