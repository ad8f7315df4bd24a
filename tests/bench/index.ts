import { readdirSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { Bench } from './bench';
import { table } from './table';

const { values, positionals } = parseArgs({ allowPositionals: true, options: { count: { type: 'string' } } });

const files = readdirSync(new URL('.', import.meta.url)).filter((file) => file.endsWith('.bench.ts'));
const benches = (await Promise.all(files.map((file) => import(new URL(file, import.meta.url).href)))) as Bench[];
const known = benches.map(({ name }) => name);

const unknown = positionals.filter((name) => !known.includes(name));
const count = values.count === undefined ? undefined : Number(values.count);
if (unknown.length > 0) {
  stop(`No bench named ${unknown.join(', ')}. There are: ${known.join(', ')}.`);
} else if (count !== undefined && !(Number.isInteger(count) && count > 0)) {
  stop(`--count takes a whole number above 0, not "${values.count}".`);
} else {
  const measured = [];
  for (const { name, about, run } of benches) {
    if (positionals.length > 0 && !positionals.includes(name)) continue;
    process.stderr.write(`${name}: ${about}\n`);
    measured.push({ name, rows: await run(count === undefined ? {} : { count }) });
  }
  console.log(`\n${table(measured)}`);
}

function stop(message: string): void {
  console.error(message);
  process.exitCode = 2;
}
