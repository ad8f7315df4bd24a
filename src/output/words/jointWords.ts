import { CARTRIDGES, formatLength, type Job, type Joint, type MaterialLine, type SequenceStep } from '../../core';

/** Width of a joint at its start, middle and end; a closed joint takes a fillet only. */
export function jointWidthAlong({ widths }: Pick<Joint, 'widths'>, { display }: Pick<Job, 'display'>): string {
  const text = (mm: number): string => formatLength(Math.max(0, mm), { unit: display, denominator: 32 });
  if (widths.every(([, width]) => width <= 0)) return 'fillet only';
  const at = [widths[0]!, widths[Math.floor(widths.length / 2)]!, widths.at(-1)!].map(([, width]) => text(width));
  return at.every((each) => each === at[0]) ? `${at[0]} all along` : at.join(', ');
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
  return `${label.charAt(0).toUpperCase()}${label.slice(1)}: ${Math.ceil(quantity)} mL, ${packs.count} cartridge${packs.count === 1 ? '' : 's'} of ${name}.`;
}
