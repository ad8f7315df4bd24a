import fc from 'fast-check';
import { expect, it } from 'vitest';
import { eachLine, type OnLine } from '../../../../src/scan/bytes';

async function linesOf(blocks: readonly Uint8Array<ArrayBuffer>[], before = 0): Promise<string[]> {
  const lines: string[] = [];
  const coming = (async function* () {
    yield* blocks;
  })();
  const onLine: OnLine = (bytes, from, to) => {
    lines.push(new TextDecoder().decode(bytes.subarray(from, to)));
    return undefined;
  };
  await eachLine(new File([], 'a.txt'), coming, onLine, before);
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

it('refuses a line that is no line, and says which it is', async () => {
  const block = new Uint8Array(600_000).fill(49);
  await expect(linesOf([block, block])).rejects.toThrow(/^Line 1 of a\.txt has more than 1,000,000 characters.*PLY/);
  const lines = new TextEncoder().encode('1\n2\r\n');
  await expect(linesOf([lines, block, block])).rejects.toThrow(/^Line 3 of a\.txt/);
  await expect(linesOf([lines, block, block], 10)).rejects.toThrow(/^Line 13 of a\.txt/);
});
