import { describe, expect, it } from 'vitest';
import { alcoveModel } from '../../../../src/core/alcove';
import { scanParameters, scansInUse } from '../../../../src/core/scanned';
import { type CellEquation, eachCellEquation } from '../../../../src/core/scanned/cellEquations';
import { jobWith, plausibleAlcove, randomFrom } from '../../../simulate';
import { cellScan } from '../../../simulate/scanner';

const READINGS = [
  { id: 'c', kind: 'tape-to-corner', side: 'left', height: 0, value: 760 },
  { id: 'd', kind: 'tape-to-rim', wall: 'back', at: 0, value: 700 },
] as const;
const job = jobWith([...READINGS], { scans: [cellScan(plausibleAlcove(2), { size: 300 })] });
const scans = scansInUse(job);
const model = alcoveModel(
  job,
  [{ wall: 'back', at: [-800, 800], height: [-700, 1100], sd: 1, interval: 450, scanned: true }],
  scanParameters(scans),
);
const first = model.parameters.length - scans[0]!.unknowns.length;

function equationsAt(values: Float64Array): { equation: CellEquation; row: Map<number, number> }[] {
  const all: { equation: CellEquation; row: Map<number, number> }[] = [];
  eachCellEquation(model, scans[0]!, first, values, (equation, { length, index, value }) => {
    const row = new Map<number, number>();
    for (let k = 0; k < length; k++) row.set(index[k]!, (row.get(index[k]!) ?? 0) + value[k]!);
    all.push({ equation: { ...equation }, row });
  });
  return all;
}

describe('eachCellEquation', () => {
  it('has the derivatives of its misfits', () => {
    const random = randomFrom(4);
    const values = Float64Array.from(
      model.parameters,
      ({ start, priorSd }) => start + random.normal(0, Math.min(priorSd ?? 1, 20) / 3),
    );
    const here = equationsAt(values);
    for (let j = 0; j < values.length; j++) {
      const step = Math.min(model.parameters[j]!.priorSd ?? 1, 1) * 1e-4;
      const beyond = values.slice();
      const before = values.slice();
      beyond[j]! += step;
      before[j]! -= step;
      const [up, down] = [equationsAt(beyond), equationsAt(before)];
      here.forEach(({ row, equation }, i) => {
        const slope = -(up[i]!.equation.misfit - down[i]!.equation.misfit) / (2 * step);
        const near = 2e-4 * (1 + Math.abs(slope));
        expect(Math.abs((row.get(j) ?? 0) - slope), `${model.parameters[j]!.name} ${equation.part}`).toBeLessThan(near);
      });
    }
  });

  it('gives a misfit of nothing for exact cells at the truth', () => {
    const alcove = plausibleAlcove(2);
    const exact = scansInUse(
      jobWith([...READINGS], { scans: [cellScan(alcove, { sd: 1e-6, size: 300, scale: 0.003, across: 40, up: -25 })] }),
    );
    const plain = alcoveModel(job, [], scanParameters(exact));
    const { back, left, right, rim, front } = alcove;
    const truth = [
      [back.y, back.xy, back.xx, back.yy],
      ...[left, right].map(({ c, y, z, yz, yy, zz }) => [c, y, z, yz, yy, zz]),
      [rim.c, rim.x, rim.z, rim.xx, rim.zz],
      [front.left.f0, front.left.f1],
      [front.right.f0, front.right.f1],
      exact[0]!.unknowns.map((name) => ({ scale: 0.003, across: 40, up: -25 })[name as 'scale'] ?? 0),
    ].flat();
    eachCellEquation(
      plain,
      exact[0]!,
      plain.parameters.length - exact[0]!.unknowns.length,
      Float64Array.from(truth),
      ({ misfit }) => {
        expect(Math.abs(misfit)).toBeLessThan(1e-3);
      },
    );
  });
});
