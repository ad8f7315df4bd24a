import type { Job } from '../job-file';
import type { StockPlan } from '../layout';
import type { MaterialLine } from './materialLine';
import { sawnInputs } from './stockLines';

/**
 * Materials with the trim counted as the plan of stock lengths cuts it, a line to each length bought, longest first. As
 * they are where the plan has no length for a piece, since what it counts would then be too little.
 */
export function trimAsPlanned(lines: readonly MaterialLine[], plan: StockPlan, job: Job): MaterialLine[] {
  const counted = lines.findIndex(({ id }) => id === 'trim');
  if (counted < 0 || plan.unplaced.length > 0) return [...lines];
  return lines.flatMap((line, i) => (i === counted ? plannedLines(plan, job) : [line]));
}

function plannedLines({ bars }: StockPlan, job: Job): MaterialLine[] {
  const sizes = [...new Set(bars.map(({ length }) => length))].sort((a, b) => b - a);
  return sizes.map((size, i): MaterialLine => {
    const cut = bars.filter(({ length }) => length === size);
    const pieces = cut.flatMap(({ cuts }) => cuts);
    return {
      id: sizes.length === 1 ? 'trim' : `trim.${i + 1}`,
      label: sizes.length === 1 ? 'trim' : `trim, length ${i + 1} of ${sizes.length}`,
      quantity: pieces.reduce((sum, { length }) => sum + length + job.cutting.kerf, 0),
      unit: 'mm',
      rule: 'as the stock plan cuts the pieces, with their allowance and a saw cut each',
      inputs: sawnInputs(pieces.length, job),
      packs: { size, count: cut.length, leftOver: cut.reduce((sum, { left }) => sum + left, 0) },
    };
  });
}
