import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Target } from './target';
import { targets } from './targets';

/** A batch that takes longer hangs, ms. */
const PATIENCE = 300_000;
/** Batches of a target that takes long are small, so that one that hangs is found. */
const BATCHES = 40;

interface Told {
  batch?: number;
  done?: number;
  failure?: string;
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    count: { type: 'string', default: '1000000' },
    seed: { type: 'string', default: String(Date.now() % 1e9) },
  },
});
const unknown = positionals.filter((name) => !targets.some((each) => each.name === name));
const count = Number(values.count);
const seed = Number(values.seed);
if (unknown.length > 0) {
  stop(`Nothing named ${unknown.join(', ')} is tried. There are: ${targets.map(({ name }) => name).join(', ')}.`);
} else if (!(Number.isInteger(count) && count > 0 && Number.isInteger(seed))) {
  stop('--count takes a whole number above 0, --seed a whole number.');
} else {
  const chosen = targets.filter(({ name }) => positionals.length === 0 || positionals.includes(name));
  const weight = chosen.reduce((sum, { inTests }) => sum + inTests, 0);
  let tried = 0;
  for (const each of chosen) {
    const share = Math.ceil((count * each.inTests) / weight);
    const began = performance.now();
    const failure = await inChild(each, share);
    const seconds = ((performance.now() - began) / 1000).toFixed(0);
    console.log(`${failure === null ? 'ok  ' : 'FAIL'} ${each.name}: ${share} cases, ${seconds} s. ${each.about}`);
    if (failure !== null) {
      console.log(failure);
      process.exitCode = 1;
    }
    tried += share;
  }
  console.log(`\n${tried} cases, seed ${seed}`);
}

/** Resolves with what went wrong, or null. */
function inChild({ name }: Target, share: number): Promise<string | null> {
  const size = Math.max(1, Math.min(2000, Math.ceil(share / BATCHES)));
  const child = fork(fileURLToPath(new URL('./batch.ts', import.meta.url)), [name, seed, share, size].map(String), {
    execArgv: ['--import', 'tsx'],
  });
  return new Promise((resolve) => {
    let last: Told = {};
    let failure: string | null = null;
    let timer: NodeJS.Timeout;
    const watch = () => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        failure = `${name}: batch of seed ${last.batch} (${size} cases) has not ended in ${PATIENCE / 1000} s`;
        child.kill('SIGKILL');
      }, PATIENCE);
    };
    watch();
    child.on('message', (told: Told) => {
      if (told.failure !== undefined) failure = told.failure;
      else last = told;
      watch();
    });
    child.on('exit', (code) => {
      clearTimeout(timer);
      resolve(failure ?? (code === 0 ? null : `${name}: ended with ${code} in the batch of seed ${last.batch}`));
    });
  });
}

function stop(message: string): void {
  console.error(message);
  process.exitCode = 2;
}
