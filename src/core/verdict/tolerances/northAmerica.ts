import { MM_PER_INCH as INCH } from '../../length';
import { inProportion, silent, type ToleranceSet } from './toleranceSet';

export const residential: ToleranceSet = {
  id: 'residential',
  name: 'Residential guidelines, framed walls',
  source:
    'Plumb: Residential Construction Performance Guidelines, 3rd edition. Bow: Texas Administrative Code, title 10, chapter 304. Both as quoted by others.',
  about: 'Plumb within 3/8 in in 32 in; bow under 1/2 in in 8 ft up and down, under 1/4 in in 32 in across.',
  plumb: inProportion((3 / 8) * INCH, 32 * INCH),
  // the shorter straightedge holds up to 32 in, the longer one up to 8 ft; between them in proportion to length
  flat: (length) => {
    const [short, long] = [32 * INCH, 96 * INCH];
    if (length <= short) return INCH / 4;
    if (length >= long) return INCH / 2;
    return INCH / 4 + ((INCH / 4) * (length - short)) / (long - short);
  },
  square: silent,
  level: silent,
};

export const tile: ToleranceSet = {
  id: 'tile',
  name: 'Tile substrate, large format',
  source: 'ANSI A108.02, for tile with an edge of 15 in or more; as quoted by others.',
  about:
    'Flat within 1/16 in in 2 ft and 1/8 in in 10 ft, from the high points. Says nothing of plumb, square or level.',
  plumb: silent,
  flat: (length) => (length <= 24 * INCH ? INCH / 16 : INCH / 8),
  square: silent,
  level: silent,
};

export const trade: ToleranceSet = {
  id: 'trade',
  name: 'Panel trade',
  source: 'Common practice, no source.',
  about:
    'Plumb within 1/4 in in 8 ft, flat within 1/8 in under a straightedge as long as the wall, square within 1/8 in in 2 ft, rim level within 1/8 in in 4 ft.',
  plumb: inProportion(INCH / 4, 96 * INCH),
  flat: () => INCH / 8,
  square: inProportion(INCH / 8, 24 * INCH),
  level: inProportion(INCH / 8, 48 * INCH),
};
