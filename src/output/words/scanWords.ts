import { type ScanSurfaceFinding, Z_95 } from '../../core';

type Surface = ScanSurfaceFinding['surface'];

/** How lengths are told: `plusMinus` of a standard deviation, at 95 %. */
interface Lengths {
  fine(mm: number): string;
  plusMinus(sd: number): string;
}

/** What the surfaces that a scan shows are called. */
export const scanSurfaceNames: Record<Surface, string> = {
  back: 'Back wall',
  left: 'Left wall',
  right: 'Right wall',
  rim: 'Rim',
  'front.left': 'Front edge of the left wall',
  'front.right': 'Front edge of the right wall',
};

/** One line about a surface: what, how much, and what to think of it. */
export interface ScanSurfaceLine {
  name: string;
  words: string;
}

/** What the scan showed of one surface, and how far it may be off, in words. */
export function scanSurfaceLines(finding: ScanSurfaceFinding, lengths: Lengths): ScanSurfaceLine[] {
  const { points, cells, noise, rms, seen } = finding;
  const isFront = finding.surface === 'front.left' || finding.surface === 'front.right';
  const places = `${cells.toLocaleString('en')} ${isFront ? 'heights' : 'cells'}`;
  return [
    { name: 'Seen', words: [seen === null ? null : `${Math.floor(100 * seen)} %`, places].filter(Boolean).join(', ') },
    ...(points === null ? [] : [{ name: 'Points used', words: points.toLocaleString('en') }]),
    ...(noise === null ? [] : [{ name: 'One point', words: lengths.plusMinus(noise) }]),
    { name: 'Left after its shape', words: `${lengths.plusMinus(rms)} for a ${isFront ? 'height' : 'cell'}` },
    ...(isFront ? [] : [{ name: 'Off as a whole', words: biasWords(finding, lengths) }]),
  ];
}

/** Which way the scan has a surface off, from where it was worked out to be with the readings by hand. */
function biasWords({ surface, bias }: ScanSurfaceFinding, lengths: Lengths): string {
  if (surface === 'back') return 'the rest is measured from it';
  if (bias === null) return 'no reading by hand tells';
  const half = lengths.plusMinus(bias.sd);
  if (Math.abs(bias.value) <= Z_95 * bias.sd) return `nothing that shows, ${half}`;
  const towards = surface === 'rim' ? ['too high', 'too low'] : ['too near', 'too far'];
  return `${lengths.fine(Math.abs(bias.value))} ${half} ${towards[bias.value > 0 ? 0 : 1]}`;
}

/** What of a surface is not measured: its words without the surface's own name. */
export const scanAssumedWords = ({ assumed }: Pick<ScanSurfaceFinding, 'assumed'>): string =>
  assumed.map((label) => label.slice(label.indexOf(': ') + 2)).join(', ');
