import { execFileSync } from 'node:child_process';
import { appendFileSync, existsSync, readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import type { Bench, Measured } from './bench';
import { historyLine, readHistory } from './history';
import { historyTable, table } from './table';
import { againstYardstick, measureYardstick } from './yardstick';

const HISTORY = new URL('./history.jsonl', import.meta.url);

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { count: { type: 'string' }, keep: { type: 'boolean' }, history: { type: 'boolean' } },
});

const files = readdirSync(new URL('.', import.meta.url)).filter((file) => file.endsWith('.bench.ts'));
const benches = (await Promise.all(files.map((file) => import(new URL(file, import.meta.url).href)))) as Bench[];
const known = benches.map(({ name }) => name);
const kept = existsSync(HISTORY) ? readHistory(readFileSync(HISTORY, 'utf8')) : [];

const unknown = positionals.filter((name) => !known.includes(name));
const count = values.count === undefined ? undefined : Number(values.count);
if (unknown.length > 0) {
  stop(`No bench named ${unknown.join(', ')}. There are: ${known.join(', ')}.`);
} else if (count !== undefined && !(Number.isInteger(count) && count > 0)) {
  stop(`--count takes a whole number above 0, not "${values.count}".`);
} else if (values.keep && count !== undefined) {
  stop('A run with --count measures something else and is not kept. Leave --count or --keep out.');
} else if (values.history) {
  console.log(historyTable(kept, positionals));
} else {
  const measured = await measure(count);
  console.log(`\n${table(measured, kept)}`);
  if (values.keep) appendFileSync(HISTORY, historyLine(aboutThisRun(), measured));
}

async function measure(count: number | undefined): Promise<Measured[]> {
  const measured: Measured[] = [];
  for (const { name, about, run } of benches) {
    if (positionals.length > 0 && !positionals.includes(name)) continue;
    process.stderr.write(`${name}: ${about}\n`);
    const rows = await run(count === undefined ? {} : { count });
    measured.push({ name, rows: againstYardstick(rows, measureYardstick()) });
  }
  return measured;
}

function aboutThisRun() {
  const commit = execFileSync('git', ['describe', '--always', '--dirty'], { encoding: 'utf8' }).trim();
  const machine = `${availableParallelism()} cores, Node ${process.version}`;
  return { date: new Date().toISOString().slice(0, 10), commit, machine };
}

function stop(message: string): void {
  console.error(message);
  process.exitCode = 2;
}
