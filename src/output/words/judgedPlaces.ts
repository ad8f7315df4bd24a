import type { PlaceVerdict, Result, Verdict } from '../../core';
import { verdictWords } from './verdictWords';

type Judged = Pick<Result, 'walls' | 'corners' | 'rim'>;

/** What each wall, corner and the rim mean for the panels, with their names. */
export const judgedPlaces = ({ walls, corners, rim }: Judged): ({ place: string } & PlaceVerdict)[] => [
  { place: 'Back wall', ...walls.back.verdict },
  { place: 'Left wall', ...walls.left.verdict },
  { place: 'Right wall', ...walls.right.verdict },
  { place: 'Left corner', ...corners.left.verdict },
  { place: 'Right corner', ...corners.right.verdict },
  { place: 'Rim', ...rim.verdict },
];

/** Places that must not be panelled yet and those that want work first, as `Back wall, rim: prepare first`. */
export function placesInTheWay(judged: Judged): string[] {
  const places = judgedPlaces(judged);
  const sayOf = (verdict: Verdict): string[] => {
    const [first, ...more] = places.filter((each) => each.verdict === verdict).map(({ place }) => place);
    if (first === undefined) return [];
    return [
      `${[first, ...more.map((place) => place.toLowerCase())].join(', ')}: ${verdictWords[verdict].toLowerCase()}`,
    ];
  };
  return [...sayOf('hold'), ...sayOf('prepare')];
}
