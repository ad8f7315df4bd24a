import { expect, it } from 'vitest';
import { historyTable, table } from '../../bench/table';

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

it('says what is asked, whether it is met, and what it was before', () => {
  const kept = [
    {
      date: '2026-01-02',
      commit: 'abc',
      machine: '2 cores',
      figures: [
        { bench: 'adjust', what: 'time', value: 4, unit: 'ms', ratio: 0.5 },
        { bench: 'exact', what: 'worst', value: 0.02, unit: 'mm', ratio: null },
      ],
    },
  ];
  const measured = [
    {
      name: 'adjust',
      rows: [
        {
          what: 'time',
          value: 3,
          unit: 'ms',
          against: { what: 'general', value: 12 },
          asked: { of: 'ratio', atMost: 1 },
        } as const,
        { what: 'named', value: 97, unit: '%', asked: { atLeast: 98 } } as const,
      ],
    },
  ];
  expect(table(measured, kept)).toBe(
    [
      'bench   figure  value  unit  against      ratio  asked      met  before',
      '------  ------  -----  ----  -----------  -----  ---------  ---  ------',
      'adjust  time        3  ms    general: 12   0.25  ratio ≤ 1  yes     0.5',
      'adjust  named      97  %                         ≥ 98       NO',
    ].join('\n'),
  );
  expect(historyTable(kept, ['exact'])).toBe(
    [
      'bench  figure  unit  2026-01-02 abc',
      '-----  ------  ----  --------------',
      'exact  worst   mm              0.02',
    ].join('\n'),
  );
});
