import { describe, expect, it } from 'vitest';
import { solve } from '../../../src/core';
import { shoppingListCsv } from '../../../src/output/shoppingList';
import { jobWith } from '../../simulate';

describe('shopping list', () => {
  const job = jobWith([], { display: 'mm' });
  const result = solve(job);

  it('has a row for each line, with whole packs', async () => {
    const [heading, ...rows] = (await shoppingListCsv(job, result)).split('\r\n');
    expect(heading!.split(',').slice(0, 4)).toEqual(['Item', 'Quantity', 'Pack', 'Packs to buy']);
    expect(rows.length).toBe(result.materials.lines.length);
    const sealant = result.materials.lines.find(({ id }) => id === 'sealant')!;
    expect(rows.find((row) => row.startsWith('sealant'))).toContain(
      `${Math.ceil(sealant.quantity)} mL,299 mL,${sealant.packs.count},`,
    );
  });

  it('defuses cells that would run as a formula', async () => {
    const [first] = result.materials.lines;
    const lines = [{ ...first!, label: '=HYPERLINK("x")' }];
    const csv = await shoppingListCsv(job, { materials: { ...result.materials, lines } });
    expect(csv).toContain(`"'=HYPERLINK(""x"")"`);
  });
});
