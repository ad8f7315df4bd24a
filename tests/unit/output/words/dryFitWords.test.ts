import { describe, expect, it } from 'vitest';
import type { DryFit } from '../../../../src/core';
import { dryFitFault, dryFitWords } from '../../../../src/output/words';
import { fixtureJob, fixtureResult } from '../fixture';

const job = fixtureJob();
const result = fixtureResult();
const fit: DryFit = {
  tolerance: 0.1,
  fits: true,
  worst: { piece: 'panels.left', edge: 'back', kind: 'gap', by: 0.043 },
  pieces: [{ piece: 'panels.left', edges: [{ edge: 'back', overlap: 0, gap: 0.043, at: [0, 0, 0] }] }],
  unread: [],
};

describe('the words of a dry fit', () => {
  it('tell what was tried and the worst of it', () => {
    expect(dryFitFault(fit, job, result)).toBeNull();
    expect(dryFitWords(fit, job, result)).toMatch(
      /1 templates? read back .* none of 1 edges? and holes? misses by more than 0\.10 mm; worst the left side panel at its back edge by 0\.04 mm/,
    );
  });

  it('tell which piece and edge does not fit, and which way', () => {
    const short: DryFit = { ...fit, fits: false, worst: { ...fit.worst!, by: 0.31 } };
    const long: DryFit = { ...short, worst: { piece: 'trim.top', edge: 'left end', kind: 'overlap', by: 1.2 } };
    expect(dryFitWords(short, job, result)).toBe(
      'Virtual dry fit: the template of the left side panel at its back edge falls short by 0.31 mm, more than 0.10 mm. Do not cut from it.',
    );
    expect(dryFitFault(long, job, result)).toContain('the top piece at its left end reaches too far by 1.20 mm');
  });

  it('tell which template cannot be read, and why', () => {
    const lost: DryFit = { ...fit, fits: false, unread: [{ piece: 'panels.back', why: 'there is no template of it' }] };
    expect(dryFitFault(lost, job, result)).toContain('the back panel cannot be read back: there is no template of it');
  });
});
