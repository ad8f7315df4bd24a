import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseJob, parseJobText, pathText } from '../../../../src/core/job-file';
import { completeJob } from './completeJob';

const scenes = new URL('../../../../scenes/', import.meta.url);

describe('parseJobText', () => {
  it('reads a job, with or without a byte order mark', () => {
    const text = JSON.stringify(completeJob());
    expect(parseJobText(text)).toEqual({ ok: true, job: completeJob() });
    expect(parseJobText(`\uFEFF${text}`)).toEqual({ ok: true, job: completeJob() });
  });

  it.each(readdirSync(scenes).filter((file) => file.endsWith('.json')))('reads scenes/%s', (file) => {
    expect(parseJobText(readFileSync(new URL(file, scenes), 'utf8')).ok).toBe(true);
  });

  it('says where a text stops being JSON', () => {
    expect(parseJobText('{\n  "format": "nookwright-job",\n  "version" 1\n}')).toEqual({
      ok: false,
      faults: [
        {
          path: '(file)',
          message:
            'is not valid JSON at line 3, column 13: look there for a comma, quote or bracket that is missing or too many',
        },
      ],
    });
    const [fault] = faultsOf('{"at": NaN}');
    expect(fault!.message).toMatch(/^is not valid JSON \(.*NaN.*\); mend it in a text editor or use an earlier copy$/);
  });

  it('says when a file is empty', () => {
    for (const text of ['', ' \n'])
      expect(faultsOf(text)).toEqual([{ path: '(file)', message: 'is empty; choose a job file' }]);
  });

  it('takes no number too large for a double', () => {
    const text = JSON.stringify(completeJob()).replace('"levelAboveFloor":1240', '"levelAboveFloor":1e999');
    expect(faultsOf(text)).toEqual([{ path: 'levelAboveFloor', message: 'must be a number; found Infinity' }]);
  });

  it('refuses keys that reach for the prototype', () => {
    const text = JSON.stringify(completeJob()).replace('{', '{"__proto__":{"display":"mm"},');
    expect(faultsOf(text).map(({ path }) => path)).toEqual(['__proto__']);
  });

  function faultsOf(text: string) {
    const parsed = parseJobText(text);
    return parsed.ok ? [] : parsed.faults;
  }
});

describe('parseJob', () => {
  it('answers anything with a job or with faults that say where and what', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const parsed = parseJob(value);
        expect(parsed.ok).toBe(false);
        if (!parsed.ok) {
          expect(parsed.faults.length).toBeGreaterThan(0);
          for (const { path, message } of parsed.faults) expect(path && message).toBeTruthy();
        }
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('lists every fault at once', () => {
    const parsed = parseJob({ ...completeJob(), display: 'cm', levelAboveFloor: 5, wall: 1 });
    expect(parsed.ok ? [] : parsed.faults.map(({ path }) => path).sort()).toEqual([
      'display',
      'levelAboveFloor',
      'wall',
    ]);
  });

  it('leaves the value that it was given as it is', () => {
    const value = completeJob();
    parseJob(value);
    expect(value).toEqual(completeJob());
  });
});

describe('pathText', () => {
  it('writes a path as it is written in code', () => {
    expect(pathText(['readings', 3, 'gaps', 0, 'value'])).toBe('readings[3].gaps[0].value');
    expect(pathText(['name'])).toBe('name');
    expect(pathText([0, 'id'])).toBe('[0].id');
    expect(pathText([])).toBe('(file)');
  });
});
