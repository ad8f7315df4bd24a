import {
  CARTRIDGES,
  degreeMark,
  formatLength,
  GYPSUM_EXPANSION,
  GYPSUM_SWELLING,
  type Job,
  type Joint,
  type MaterialLine,
  MM_PER_INCH,
  type SequenceStep,
  temperatureShown,
  temperatureText,
} from '../../core';
import { capital } from '../drawing';
import { counted } from './counted';

/** Width of a joint at its start, middle and end; a closed joint takes a fillet only. */
export function jointWidthAlong({ widths }: Pick<Joint, 'widths'>, { display }: Pick<Job, 'display'>): string {
  const text = (mm: number): string => formatLength(Math.max(0, mm), { unit: display, denominator: 32 });
  if (widths.every(([, width]) => width <= 0)) return 'fillet only';
  const at = [widths[0]!, widths[Math.floor(widths.length / 2)]!, widths.at(-1)!].map(([, width]) => text(width));
  return at.every((each) => each === at[0]) ? `${at[0]} all along` : at.join(', ');
}

/**
 * What movement asks of a joint's sealant, `0.6 mm: 80 %` of what its class takes, in inch jobs `0.024 in: 80 %`, since
 * no fraction is as fine; `fillet only` where it has no width to take.
 */
export function movementUse(
  { moves, filler }: Pick<Joint, 'moves' | 'filler'>,
  { display }: Pick<Job, 'display'>,
): string {
  if (filler === 'caulk') return 'dry';
  if (moves === null) return 'fillet only';
  const [least, most] = [moves.least, moves.most].map((mm) =>
    display === 'mm' ? mm.toFixed(1) : (mm / MM_PER_INCH).toFixed(3),
  );
  const range = least === most ? most : `${least} to ${most}`;
  return `${range} ${display}: ${Math.round(100 * moves.used)} %${moves.used > 1 ? ', too much' : ''}`;
}

/** As a multiple of 10⁻⁶. */
const millionths = (share: number): number => Math.round(1e7 * share) / 10;

/** By what movement is reckoned, in one sentence. */
export function movementBasis({ supplies: { movement }, display }: Pick<Job, 'supplies' | 'display'>): string {
  const range = (low: number, high: number | undefined): string =>
    high === undefined || high === low ? String(low) : `${Math.min(low, high)} to ${Math.max(low, high)}`;
  const perDegree = (kelvin: number): number => Math.round(10 * temperatureShown('per-degree', kelvin, display)) / 10;
  const { expansion, expansionMost } = movement;
  const grows = range(perDegree(expansion), expansionMost === undefined ? undefined : perDegree(expansionMost));
  return `a sheet that grows ${grows} × 10⁻⁶ per ${degreeMark(display)} and ${range(movement.swelling, movement.swellingMost)} × 10⁻⁶ per % of relative humidity, ${temperatureText('temperature-change', movement.swing, display)} and ${movement.humidity} % of change, wallboard behind it that grows ${perDegree(millionths(GYPSUM_EXPANSION))} and ${millionths(GYPSUM_SWELLING)}, and a sealant that moves ${Math.round(1000 * movement.capability) / 10} % of its width (class ${Math.round(1000 * movement.capability) / 10})`;
}

/** In which runs each joint is closed, `2` or `2, 3`, by its id. */
export function jointRuns(sequence: readonly Pick<SequenceStep, 'id' | 'joints'>[]): (id: string) => string {
  const runs = new Map<string, string[]>();
  for (const step of sequence) {
    const run = /^seal\.(\d+)$/.exec(step.id)?.[1];
    if (run === undefined) continue;
    for (const { id } of step.joints) runs.set(id, [...(runs.get(id) ?? []), run]);
  }
  return (id) => runs.get(id)?.join(', ') ?? '';
}

/** The common size that a cartridge's contents are, to a tenth of a mL; null for another. */
export function cartridgeName(contents: number): string | null {
  return Object.entries(CARTRIDGES).find(([, size]) => Math.abs(size - contents) < 0.1)?.[0] ?? null;
}

/** `Sealant for wet joints: 282 mL, 1 cartridge of 10.1 oz.` */
export function cartridgeWords({ label, quantity, packs }: MaterialLine): string {
  const name = cartridgeName(packs.size) ?? `${Math.round(packs.size)} mL`;
  return `${capital(label)}: ${Math.ceil(quantity)} mL, ${counted(packs.count, 'cartridge')} of ${name}.`;
}
