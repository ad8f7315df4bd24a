import type { WallName } from '../../../core';
import type { Lengths } from '../../parts';
import type { Where } from './place';

type Maybe = number | undefined;

/** Where a reading is taken, in words; what is not known yet is left out. */
export function whereWords(where: Where, lengths: Lengths): string {
  const level = (height: Maybe): string | null => {
    if (height === undefined) return null;
    if (Math.abs(height) < 1) return 'at the level line';
    return `${lengths.text(Math.abs(height))} ${height > 0 ? 'above' : 'below'} the level line`;
  };
  const along = (wall: WallName | undefined, at: Maybe): string | null => {
    if (at === undefined) return null;
    if (wall !== 'back') return `${lengths.text(at)} out from the back wall`;
    return Math.abs(at) < 1
      ? 'at the plumb line'
      : `${lengths.text(Math.abs(at))} ${at > 0 ? 'right' : 'left'} of the plumb line`;
  };
  const parts = (): (string | null)[] => {
    switch (where.kind) {
      case 'tape-to-corner':
      case 'angle':
        return [`${where.side} corner`, level(where.height)];
      case 'tape-to-rim':
      case 'plumb':
        return [`${where.wall} wall`, along(where.wall, where.at)];
      case 'span':
        return [level(where.height), along(undefined, where.at)];
      case 'depth':
        return [`${where.wall} wall`, level(where.height)];
      case 'square':
        return [
          `${where.side} corner`,
          level(where.height),
          where.alongBack !== undefined && where.alongSide !== undefined
            ? `marks ${lengths.text(where.alongBack)} along the back wall and ${lengths.text(where.alongSide)} along the side wall`
            : null,
        ];
      case 'diagonal':
        return [
          `${where.from?.side} corner ${level(where.from?.height) ?? ''}`,
          `to ${where.to?.side} corner ${level(where.to?.height) ?? ''}`,
        ];
      case 'straightedge': {
        const { wall, from, to } = where;
        if (from?.at !== undefined && from.at === to?.at) {
          return [`${wall} wall`, 'upright', along(wall, from.at)];
        }
        if (from?.height !== undefined && from.height === to?.height) {
          return [`${wall} wall`, 'level', level(from.height)];
        }
        return [`${wall} wall`, along(wall, from?.at), `to ${along(wall, to?.at) ?? ''}`];
      }
    }
  };
  return parts()
    .filter((part) => part !== null)
    .map((part) => part.trim())
    .join(', ');
}
