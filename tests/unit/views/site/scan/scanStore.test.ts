import { expect, it } from 'vitest';
import { useScan } from '../../../../../src/views/site/scan/scan-store';

const sorted = () => ({
  source: 'a.ply',
  id: null,
  positions: new Float32Array(9),
  labels: new Uint8Array(3),
  quality: null,
});
const state = () => useScan.getState();

it('keeps the scan in hand with its job', () => {
  state().enter('one');
  state().show(sorted());
  state().pick({ points: Uint32Array.of(1), how: 'drawn around' });
  state().assign('back');
  state().enter('two');
  expect(state().stage.at).toBe('choosing');
  expect(state().done).toEqual([]);
  state().enter('one');
  expect(state().stage.at).toBe('sorted');
  expect(state().done).toHaveLength(1);
});

it('stops the work on a scan when another job comes into hand', () => {
  state().enter('three');
  let stopped = false;
  state().work('Reading', () => {
    stopped = true;
    state().back({ at: 'choosing' });
  });
  state().enter('four');
  expect(stopped).toBe(true);
  expect(state().stage.at).toBe('choosing');
  state().enter('three');
  expect(state().stage.at).toBe('choosing');
});
