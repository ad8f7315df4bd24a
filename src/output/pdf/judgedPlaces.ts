import type { PlaceVerdict, Result } from '../../core';

/** What each wall, corner and the rim mean for the panels, with their names. */
export const judgedPlaces = ({ walls, corners, rim }: Result): ({ place: string } & PlaceVerdict)[] => [
  { place: 'Back wall', ...walls.back.verdict },
  { place: 'Left wall', ...walls.left.verdict },
  { place: 'Right wall', ...walls.right.verdict },
  { place: 'Left corner', ...corners.left.verdict },
  { place: 'Right corner', ...corners.right.verdict },
  { place: 'Rim', ...rim.verdict },
];
