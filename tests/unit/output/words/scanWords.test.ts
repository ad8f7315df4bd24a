import { describe, expect, it } from 'vitest';
import type { ScanSurfaceFinding } from '../../../../src/core';
import { scanAssumedWords, scanSurfaceLines } from '../../../../src/output/words';
import { lengthsIn } from '../../../../src/views/parts';

const finding: ScanSurfaceFinding = {
  surface: 'left',
  cells: 512,
  rms: 0.4,
  factor: 1,
  worst: { at: 0, height: 0, residual: 0, w: 0 },
  points: 12_345,
  noise: 2,
  bias: { value: 1.5, sd: 0.4 },
  seen: 0.926,
  assumed: ['left wall: bow up the wall', 'left wall: twist'],
  against: [],
  residuals: null,
};
const lines = (change: Partial<ScanSurfaceFinding>) =>
  Object.fromEntries(
    scanSurfaceLines({ ...finding, ...change }, lengthsIn('mm')).map(({ name, words }) => [name, words]),
  );

describe('scanSurfaceLines', () => {
  it('say what was seen, how noisy it is and how far it is off, with the ±', () => {
    expect(lines({})).toEqual({
      Seen: '92 %, 512 cells',
      'Points used': '12,345',
      'One point': '±4.0 mm',
      'Left after its shape': '±0.8 mm for a cell',
      'Off as a whole': '1.5 mm ±0.8 mm too near',
    });
  });

  it('claim no more of a bias than its ± lets them', () => {
    expect(lines({ bias: { value: -0.5, sd: 0.4 } })['Off as a whole']).toBe('nothing that shows, ±0.8 mm');
    expect(lines({ bias: { value: -1.5, sd: 0.4 } })['Off as a whole']).toBe('1.5 mm ±0.8 mm too far');
    expect(lines({ surface: 'rim', bias: { value: 1.5, sd: 0.4 } })['Off as a whole']).toContain('too high');
    expect(lines({ bias: null })['Off as a whole']).toBe('no reading by hand tells');
    expect(lines({ surface: 'back', bias: null })['Off as a whole']).toBe('the rest is measured from it');
  });

  it('leave out what the job does not say', () => {
    expect(lines({ points: null, noise: null })).not.toHaveProperty('One point');
    expect(lines({ surface: 'front.left', seen: null, cells: 6 }).Seen).toBe('6 heights');
  });

  it('name what is assumed without the name of the surface', () => {
    expect(scanAssumedWords(finding)).toBe('bow up the wall, twist');
  });
});
