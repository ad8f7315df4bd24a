import { parseArgs } from 'node:util';

const usage = 'Usage: npm run job -- JOB.json --out DIR [--paper a4|letter|a3|tabloid|roll] [--up face|back]';

const paperNames = ['a4', 'letter', 'a3', 'tabloid', 'roll'] as const;
const sides = ['face', 'back'] as const;

export interface Arguments {
  job: string;
  out: string;
  paper?: (typeof paperNames)[number];
  up?: (typeof sides)[number];
}

export type ParsedArguments = { ok: true; arguments: Arguments } | { ok: false; message: string };

/** Reads the words after `npm run job --`. */
export function parseArguments(words: string[]): ParsedArguments {
  let parsed: { values: { out?: string; paper?: string; up?: string }; positionals: string[] };
  try {
    parsed = parseArgs({
      args: words,
      allowPositionals: true,
      options: { out: { type: 'string' }, paper: { type: 'string' }, up: { type: 'string' } },
    });
  } catch (error) {
    return wrong((error as Error).message.split('. ')[0]!);
  }
  const {
    values: { out, paper, up },
    positionals: [job, ...more],
  } = parsed;
  if (!job) return wrong('which job file?');
  if (more.length > 0) return wrong(`one job file at a time, but there are ${more.length + 1}`);
  if (!out) return wrong('where to? give a folder with --out');
  if (paper !== undefined && !isOneOf(paperNames, paper)) return wrong(`unknown paper "${paper}"`);
  if (up !== undefined && !isOneOf(sides, up)) return wrong(`--up takes face or back, not "${up}"`);
  return { ok: true, arguments: { job, out, ...(paper && { paper }), ...(up && { up }) } };
}

const wrong = (what: string): ParsedArguments => ({ ok: false, message: `${what}\n${usage}` });

function isOneOf<T extends string>(known: readonly T[], text: string): text is T {
  return (known as readonly string[]).includes(text);
}
