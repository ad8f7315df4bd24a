import { solve } from '../../../src/core';
import { dryFitOf, readTemplate } from '../../../src/output/dryFit';
import { templateFiles } from '../../../src/output/templateFiles';
import { mutatedText } from '../mutate';
import { jobs } from '../samples';
import { must, target } from '../target';

const [job] = jobs;
const result = solve(job!);
const files = await templateFiles(job!, result);

const parts = [
  '\n0\nENDSEC\n',
  '\n0\nEOF\n',
  '\n10\n1e308\n',
  '\n70\n1\n',
  '\n8\ncut\n',
  '\n42\n1\n',
  '\n90\n4000000000\n',
  'NaN',
  '-',
];

export const templateTargets = [
  target({
    name: 'template',
    about:
      'A DXF template that was changed anywhere is read, or refused with the reason; a dry fit with it stays finite.',
    cases: mutatedText(
      files.map(({ dxf }) => dxf),
      parts,
    ),
    check: async (text) => {
      const read = await readTemplate(text);
      if (!read.ok) {
        must(/\p{L}/u.test(read.why), 'refused without a reason');
        return;
      }
      const tried = await dryFitOf(job!, result, new Map([[files[0]!.piece, text]]));
      must(numbersOf(tried).every(Number.isFinite), 'a dry fit is not finite');
    },
    inTests: 400,
  }),
];

/** All numbers in a value. */
function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(numbersOf);
}
