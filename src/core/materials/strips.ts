import type { Supplies } from '../job-file';
import type { Panel } from '../panel';

/** Length of upright double-faced strip behind a panel, mm: one near each side, and between them no farther apart than the spacing. */
export function stripLength({ outline }: Pick<Panel, 'outline'>, { spacing, edgeClear }: Supplies['strips']): number {
  const us = outline.map(([u]) => u);
  const vs = outline.map(([, v]) => v);
  const across = Math.max(...us) - Math.min(...us) - 2 * edgeClear;
  const up = Math.max(...vs) - Math.min(...vs) - 2 * edgeClear;
  if (across < 0 || up < 0) return 0;
  return (Math.ceil(across / spacing - 1e-9) + 1) * up;
}
