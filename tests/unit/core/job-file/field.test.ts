import { describe, expect, it } from 'vitest';
import {
  degrees,
  idText,
  lineText,
  millimetres,
  noteText,
  positiveMillimetres,
  standardDeviation,
} from '../../../../src/core/job-file/field';

const message = (
  schema: { safeParse(value: unknown): { error?: { issues: { message: string }[] } } },
  value: unknown,
) => schema.safeParse(value).error?.issues.map((issue) => issue.message) ?? null;

describe('fields', () => {
  it('names bound, unit and what was found', () => {
    expect(message(millimetres(-5, 5), 5.5)).toEqual(['must be at most 5 mm; found 5.5']);
    expect(message(degrees(60, 120), 59)).toEqual(['must be at least 60°; found 59']);
    expect(message(positiveMillimetres(5), -1)).toEqual(['must be more than 0 mm; found -1']);
    expect(message(positiveMillimetres(5), 0)).toEqual(['must be more than 0 mm; found 0']);
    expect(message(standardDeviation(5), 0)).toEqual(['must be at least 0.000001; found 0']);
  });

  it('takes the bounds themselves', () => {
    for (const value of [-5, 0, 5]) expect(message(millimetres(-5, 5), value)).toBeNull();
    expect(message(positiveMillimetres(5), Number.MIN_VALUE)).toBeNull();
  });

  it('takes an id of one line that shows', () => {
    for (const id of ['r1', 'Ventil links', '淋浴', 'a/b', '½"']) expect(message(idText, id)).toBeNull();
    for (const id of ['', '   ', 'a\u0000', 'a\nb', '\u0085', 'x'.repeat(61)])
      expect(message(idText, id)).not.toBeNull();
    expect(message(lineText(3), '')).toBeNull();
  });

  it('takes notes of several lines', () => {
    expect(message(noteText, 'first\n\tsecond')).toBeNull();
  });
});
