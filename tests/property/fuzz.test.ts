import { describe, expect, it, vi } from 'vitest';
import { targets } from '../fuzz/targets';
import { tryCases } from '../fuzz/tryCases';

vi.setConfig({ testTimeout: 240_000 });

// The reader of DXF talks about what it passes over.
vi.spyOn(console, 'warn').mockImplementation(() => undefined);

describe('what strangers may have written', () => {
  it.each(targets)('$name: $about', async (target) => {
    expect(await tryCases(target, 1126, target.inTests)).toBeNull();
  });
});
