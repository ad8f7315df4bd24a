import { expect, it } from 'vitest';
import type { DryFit } from '../../../src/core';
import { fitTags } from '../../../src/scene/tags';

const dryFit: DryFit = {
  tolerance: 0.1,
  fits: false,
  worst: null,
  pieces: [
    {
      piece: 'panels.left',
      edges: [
        { edge: 'back', overlap: 0.02, gap: 0.01, at: [1, 2, 3] },
        { edge: 'front', overlap: 0, gap: 0.34, at: [4, 5, 6] },
      ],
    },
    { piece: 'trim.top', edges: [{ edge: 'left end', overlap: 0.2, gap: 0, at: [0, 0, 0] }] },
  ],
  unread: [],
};
const twice = ([x, y, z]: readonly [number, number, number]): [number, number, number] => [2 * x, 2 * y, 2 * z];

it('tells what each edge of the picked panel or piece misses by, where it is drawn', () => {
  expect(fitTags(dryFit, 'left', twice)).toEqual([
    { key: 'fit panels.left back', kind: 'fit', text: 'back: fits, 0.02 mm', at: [2, 4, 6] },
    { key: 'fit panels.left front', kind: 'gap', text: 'front: falls short, 0.34 mm', at: [8, 10, 12] },
  ]);
  expect(fitTags(dryFit, 'trim.top', twice)[0]).toMatchObject({
    kind: 'gap',
    text: 'left end: reaches too far, 0.20 mm',
  });
});

it('tells nothing before the fit was tried or while nothing is picked', () => {
  expect(fitTags(null, 'left', twice)).toEqual([]);
  expect(fitTags(dryFit, null, twice)).toEqual([]);
});
