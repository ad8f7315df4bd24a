import type { PanelName } from '../panel';
import { placeWords } from './placeWords';
import type { GettingIn } from './report';

/** What to mind when a panel is brought to its wall; none where it simply goes in. */
export function bringingIn({ panels }: GettingIn, panel: PanelName): string[] {
  const { way, tilt, doubtful } = panels[panel];
  const near = doubtful ? ['It goes in by less than the readings are sure of: try it dry, with a plane at hand.'] : [];
  if (way === 'tilted' && tilt) {
    const line = tilt.about === 'upright' ? 'an upright line' : 'a level line';
    return [
      `Bring it in turned by ${angleWords(tilt.angle)} about ${line}, ${tilt.first} edge first: straight in it does not pass.`,
      ...near,
    ];
  }
  if (way === 'bowed') {
    return [
      'Bring it in bowed, its upright edges drawn together by two people, middle towards the room: set both edges in their corners, then press it flat. Gloves and eye protection: a bent sheet springs.',
      ...near,
    ];
  }
  return near;
}

/** Where a sheet as bought does not pass on its way, so that it is cut before. */
export function carryingFirst({ carried }: GettingIn, panel: PanelName): string[] {
  const sheet = carried.find((each) => each.panel === panel && each.as === 'sheet');
  const stuck = sheet?.passages.filter(({ passes }) => !passes).map(({ place }) => placeWords[place]) ?? [];
  return stuck.length === 0
    ? []
    : [`Cut it before it is carried in: as bought the sheet does not pass ${stuck.join(', ')}.`];
}

/** To whole degrees, from a tenth of one where it is less. */
const angleWords = (degrees: number): string =>
  `${degrees < 1 ? Math.max(0.1, Number(degrees.toFixed(1))) : Math.round(degrees)}°`;
