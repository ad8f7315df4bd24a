import fc from 'fast-check';
import { expect, it } from 'vitest';
import { eachLine } from '../../../../src/scan/bytes';

async function linesOf(blocks: readonly Uint8Array<ArrayBuffer>[]): Promise<string[]> {
  const lines: string[] = [];
  const coming = (async function* () {
    yield* blocks;
  })();
  await eachLine(new File([], 'a.txt'), coming, (bytes, from, to) => {
    lines.push(new TextDecoder().decode(bytes.subarray(from, to)));
    return undefined;
  });
  return lines;
}

it('gives the same lines however the text is cut into blocks', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.constantFrom('1', ' ', 'x', '\n', '\r', '\r\n'), { maxLength: 60 }),
      fc.integer({ min: 1, max: 7 }),
      async (parts, size) => {
        const text = parts.join('');
        const bytes = new TextEncoder().encode(text);
        const blocks = Array.from({ length: Math.ceil(bytes.length / size) }, (_, i) =>
          bytes.slice(i * size, (i + 1) * size),
        );
        const expected = text.split(/\r\n|\n|\r/);
        if (expected.at(-1) === '') expected.pop();
        expect(await linesOf(blocks)).toEqual(expected);
      },
    ),
    { numRuns: 500 },
  );
});

it('refuses a line that is no line', async () => {
  const block = new Uint8Array(600_000).fill(49);
  await expect(linesOf([block, block])).rejects.toThrow(/a\.txt has a line of more than 1,000,000 characters/);
});
