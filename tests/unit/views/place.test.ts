import { expect, it } from 'vitest';
import { addressOf, placeOf } from '../../../src/views/place';

it.each([
  '#site/readings',
  '#site/truth',
  '#site/holes',
  '#site/basics',
  '#bench/back',
  '#bench/left',
  '#bench/right',
  '#bench/trim',
  '#bench/trim.left.top',
  '#bench/shelves.by%20the%20valve%2F2',
  '#van/materials',
  '#van/work',
  '#van/pieces',
  '#jobs',
])('keeps %s in the address', (address) => expect(addressOf(placeOf(address))).toBe(address));

it.each([
  ['', '#site/readings'],
  ['#nowhere', '#site/readings'],
  ['#site/attic', '#site/readings'],
  ['#bench', '#bench/back'],
  ['#/bench/roof', '#bench/back'],
  ['#bench/%E0%A4%A', '#bench/back'],
  ['#van', '#van/materials'],
  ['#van/roof', '#van/materials'],
])('takes %s for %s', (address, place) => expect(addressOf(placeOf(address))).toBe(place));
