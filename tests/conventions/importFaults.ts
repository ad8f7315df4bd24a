import { dirname, join, normalize } from 'node:path/posix';
import { importsOf } from './importsOf';

export interface ImportFault {
  file: string;
  line: number;
  specifier: string;
  why: string;
}

/** What the files of each folder of src may import from the other folders of src. */
const LAYERS: Readonly<Record<string, readonly string[]>> = {
  core: [],
  milp: ['core'],
  output: ['core'],
  guide: ['core'],
  scan: ['core'],
  job: ['core', 'milp', 'scan'],
  scene: ['core'],
  cli: ['core', 'milp', 'output'],
  views: ['core', 'guide', 'job', 'output', 'scan', 'scene'],
};

/** The packages that the model stands on. It draws nothing, keeps nothing and runs anywhere. */
const PACKAGES_OF_CORE: readonly string[] = ['ml-matrix', 'zod'];

const SHADERS_BELONG_TO = 'scene';

const EXTENSIONS = ['.ts', '.tsx', '/index.ts', '/index.tsx'];

/**
 * Imports that run against the layers, that bring into the model a package that it must not need, or that go past the
 * face (`index.ts`) of a folder they stand outside of.
 * @param files text by path from the project's root, `/` between parts; files outside `src` are importers of nothing
 */
export function importFaults(files: ReadonlyMap<string, string>): ImportFault[] {
  const faults: ImportFault[] = [];
  for (const [file, text] of files) {
    if (!file.startsWith('src/') || !/\.tsx?$/.test(file)) continue;
    for (const { specifier, line } of importsOf(file, text)) {
      const why = specifier.startsWith('.')
        ? faultOf(file, resolve(files, file, specifier), files)
        : packageFault(file, specifier);
      if (why) faults.push({ file, line, specifier, why });
    }
  }
  return faults;
}

function packageFault(from: string, specifier: string): string | null {
  if (layerOf(from) !== 'core' || PACKAGES_OF_CORE.includes(specifier)) return null;
  return `src/core stands on ${PACKAGES_OF_CORE.join(', ')} alone`;
}

function resolve(files: ReadonlyMap<string, string>, file: string, specifier: string): string {
  const path = normalize(join(dirname(file), specifier.replace(/\?.*$/, '')));
  return ['', ...EXTENSIONS].map((extension) => path + extension).find((candidate) => files.has(candidate)) ?? path;
}

function faultOf(from: string, to: string, files: ReadonlyMap<string, string>): string | null {
  if (to.startsWith('shaders/')) {
    return layerOf(from) === SHADERS_BELONG_TO ? null : `only src/${SHADERS_BELONG_TO} imports shaders`;
  }
  if (to.startsWith('tests/')) return 'src imports nothing from tests';
  if (!to.startsWith('src/')) return null;
  return againstTheLayers(from, to) ?? pastTheFace(from, to, files);
}

function againstTheLayers(from: string, to: string): string | null {
  const [above, below] = [layerOf(from), layerOf(to)];
  if (above === null || above === below) return null;
  if (below === null) return `src/${above} does not import ${to}`;
  const allowed = LAYERS[above];
  if (!allowed) return `src/${above} is no layer that tests/conventions/importFaults.ts knows`;
  return allowed.includes(below) ? null : `src/${above} does not import src/${below}`;
}

/** The folder right below src that a file is in, or null for a file in src itself. */
function layerOf(path: string): string | null {
  const [, layer, inside] = path.split('/');
  return layer !== undefined && inside !== undefined ? layer : null;
}

function pastTheFace(from: string, to: string, files: ReadonlyMap<string, string>): string | null {
  const folder = outermostFolderNotHolding(from, to);
  if (folder === null) return null;
  const faces = [`${folder}/index.ts`, `${folder}/index.tsx`];
  if (faces.includes(to)) return null;
  return faces.some((face) => files.has(face)) ? `goes past the face ${faces[0]}` : `${folder} has no face index.ts`;
}

function outermostFolderNotHolding(from: string, to: string): string | null {
  const parts = dirname(to).split('/');
  for (let length = 1; length <= parts.length; length++) {
    const folder = parts.slice(0, length).join('/');
    if (!from.startsWith(`${folder}/`)) return folder;
  }
  return null;
}
