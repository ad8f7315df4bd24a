import { describe, expect, it } from 'vitest';
import { importFaults } from '../../conventions/importFaults';

const TREE = {
  'src/main.tsx': "import { App } from './views';",
  'src/views/index.ts': "export { App } from './shell';",
  'src/views/shell/index.ts': "export { App } from './App';",
  'src/views/shell/App.tsx': "import { solve } from '../../core'; import '../../scene';",
  'src/scene/index.ts': "import wall from '../../shaders/wall.frag?raw'; export { wall };",
  'src/job/index.ts': "new Worker(new URL('./solver.worker.ts', import.meta.url));",
  'src/job/solver.worker.ts': "import '../core';",
  'src/output/index.ts': "import type { Result } from '../core';",
  'src/core/index.ts': "export { solve } from './solve';",
  'src/core/solve.ts': "import { adjust } from './adjust';",
  'src/core/adjust/index.ts': "export { adjust } from './adjust';",
  'src/core/adjust/adjust.ts': "import { observe } from '../survey';",
  'src/core/survey/index.ts': "export { observe } from './observe';",
  'src/core/survey/observe.ts': '',
  'shaders/wall.frag': '',
};

function faultsWith(file: string, text: string): string[] {
  const faults = importFaults(new Map(Object.entries({ ...TREE, [file]: text })));
  return faults.map((fault) => `${fault.file}:${fault.line} ${fault.why}`);
}

describe('importFaults', () => {
  it('lets a tree in order be', () => {
    expect(importFaults(new Map(Object.entries(TREE)))).toEqual([]);
  });

  it.each([
    ['src/core/survey/observe.ts', "import '../../views';", 'src/core does not import src/views'],
    ['src/core/survey/observe.ts', "import type { X } from '../../job';", 'src/core does not import src/job'],
    ['src/core/survey/observe.ts', "let x: import('../../scene').X;", 'src/core does not import src/scene'],
    ['src/output/index.ts', "export * from '../scene';", 'src/output does not import src/scene'],
    ['src/scene/index.ts', "await import('../job');", 'src/scene does not import src/job'],
    ['src/job/solver.worker.ts', "require('../output');", 'src/job does not import src/output'],
    ['src/job/index.ts', "new URL('../views/index.ts', import.meta.url);", 'src/job does not import src/views'],
    ['src/job/index.ts', "import.meta.glob(['../views/index.ts']);", 'src/job does not import src/views'],
    ['src/views/index.ts', "import '../main';", 'src/views does not import src/main.tsx'],
    ['src/views/index.ts', "import '../../shaders/wall.frag?raw';", 'only src/scene imports shaders'],
    ['src/views/index.ts', "import '../../tests/simulate';", 'src imports nothing from tests'],
    ['src/gadget/index.ts', "import '../core';", 'src/gadget is no layer that tests/conventions/importFaults.ts knows'],
  ])('finds a layer crossed: %s with %s', (file, text, why) => {
    expect(faultsWith(file, text)).toEqual([`${file}:1 ${why}`]);
  });

  it.each([
    ['src/views/index.ts', "import '../core/solve';", 'goes past the face src/core/index.ts'],
    ['src/views/index.ts', "import '../core/adjust';", 'goes past the face src/core/index.ts'],
    ['src/core/solve.ts', "import './adjust/adjust';", 'goes past the face src/core/adjust/index.ts'],
    ['src/core/adjust/adjust.ts', "import '../survey/observe.ts';", 'goes past the face src/core/survey/index.ts'],
    ['src/core/solve.ts', "import './loose/thing';", 'src/core/loose has no face index.ts'],
  ])('finds a face gone past: %s with %s', (file, text, why) => {
    expect(faultsWith(file, text)).toEqual([`${file}:1 ${why}`]);
  });

  it.each(['react', 'three/examples/jsm/lines/Line2.js', '@react-three/fiber', 'node:fs', 'fs', 'zustand'])(
    'keeps %s out of the model',
    (name) => {
      const text = `import '${name}';`;
      expect(faultsWith('src/core/solve.ts', text)).toEqual([
        'src/core/solve.ts:1 src/core stands on ml-matrix, zod alone',
      ]);
      expect(faultsWith('src/job/index.ts', text)).toEqual([]);
    },
  );

  it('lets the model use its own packages', () => {
    expect(faultsWith('src/core/solve.ts', "import { Matrix } from 'ml-matrix'; import { z } from 'zod';")).toEqual([]);
  });

  it('says on which line', () => {
    expect(faultsWith('src/core/solve.ts', "import './adjust';\n\nimport '../job';")).toEqual([
      'src/core/solve.ts:3 src/core does not import src/job',
    ]);
  });

  it('looks at code, not at comments or texts', () => {
    expect(faultsWith('src/core/solve.ts', `// import '../views'\nconst text = "import '../views'";`)).toEqual([]);
  });
});
