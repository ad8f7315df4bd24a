import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { importFaults } from './importFaults';

const root = fileURLToPath(new URL('../..', import.meta.url));

const files = new Map(
  readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => [path.slice(root.length).split(sep).join('/'), readFileSync(path, 'utf8')]),
);

const faults = importFaults(files);
for (const { file, line, specifier, why } of faults) console.error(`${file}:${line} imports '${specifier}': ${why}`);
console.log(`Imports of ${files.size} files looked at, ${faults.length} against the rules.`);
process.exitCode = faults.length === 0 ? 0 : 1;
