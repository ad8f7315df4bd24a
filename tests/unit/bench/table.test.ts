import { expect, it } from 'vitest';
import { table } from '../../bench/table';

it('prints one aligned table with ratios', () => {
  const text = table([
    { name: 'exact', rows: [{ what: 'worst', value: 0.0183412, unit: 'mm', note: 'alcove 5' }] },
    { name: 'adjust', rows: [{ what: 'time', value: 3, unit: 'ms', against: { what: 'general solver', value: 12 } }] },
    { name: 'adjust', rows: [{ what: 'cases', value: 2000, unit: '1' }] },
  ]);
  expect(text).toBe(
    [
      'bench   figure    value  unit  against             ratio  note',
      '------  ------  -------  ----  ------------------  -----  --------',
      'exact   worst   0.01834  mm                               alcove 5',
      'adjust  time          3  ms    general solver: 12   0.25',
      'adjust  cases      2000',
    ].join('\n'),
  );
});
