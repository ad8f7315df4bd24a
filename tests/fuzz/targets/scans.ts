import fc from 'fast-check';
import { parseJob, solve } from '../../../src/core';
import { resultJson } from '../../../src/output';
import { readScan, scanLimits } from '../../../src/scan';
import { mutatedBytes, mutatedValue } from '../mutate';
import { scanFiles, scannedJob } from '../scanSamples';
import { must, target } from '../target';
import { tell } from './jobFiles';

const limits = { ...scanLimits, points: 5000, corners: 50_000, triangles: 50_000 };

const files = fc
  .constantFrom(...Object.keys(scanFiles))
  .chain((name) => fc.tuple(fc.constant(name), inHeadOrAnywhere(scanFiles[name]!)));

/** Half of the changes fall into the head, where they do most. */
function inHeadOrAnywhere(bytes: Uint8Array<ArrayBuffer>): fc.Arbitrary<Uint8Array<ArrayBuffer>> {
  const head = bytes.subarray(0, 400);
  const changedHead = mutatedBytes([head]).map((changed) => new Uint8Array([...changed, ...bytes.subarray(400)]));
  return fc.oneof(mutatedBytes([bytes]), changedHead);
}

/** A line, byte or part of the file, by its number or name. */
const place = /\b(lines?|bytes?|item|element|accessor|buffer|buffer view|node|mesh|scene|triangle|part) (\d|")/i;

/** Of these no place can be told: they are about the file as a whole. */
const ofTheWhole =
  / is empty\.| usable points| files are not read here\.| saved as UTF-16\.| compressed with Draco| more than can be held here\.|not enough memory/;

async function readOrTold(name: string, bytes: Uint8Array<ArrayBuffer>): Promise<void> {
  const read = await readScan(new File([bytes], name), { limits });
  if (!read.ok) {
    must(/^\S.*[.!]$/s.test(read.message), `refused without a sentence: ${read.message}`);
    must(ofTheWhole.test(read.message) || place.test(read.message), `refused without a place: ${read.message}`);
    return;
  }
  const { positions, origin } = read.scan;
  must(positions.length / 3 <= limits.points, 'more points than may be kept');
  must(positions.every(Number.isFinite) && origin.every(Number.isFinite), 'a coordinate is no number');
}

/** The scans of a job, changed, in the job again. */
const scans = mutatedValue([scannedJob.scans]).map((changed) => ({ ...scannedJob, scans: changed }));

export const scanTargets = [
  target({
    name: 'scan-files',
    about:
      'Files of points and meshes cut off or with bytes changed are read into finite points or refused in words that name a place.',
    cases: files,
    check: ([name, bytes]) => readOrTold(name, bytes),
    inTests: 1200,
  }),
  target({
    name: 'scan-cells',
    about: 'Jobs whose scans have cells, edges and priors changed are refused with a place or give finite numbers.',
    cases: scans,
    check: (value) => {
      const parsed = parseJob(value);
      if (parsed.ok) resultJson(solve(parsed.job));
      else tell(parsed.faults);
    },
    inTests: 60,
  }),
];
