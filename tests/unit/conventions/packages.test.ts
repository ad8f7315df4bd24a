import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const read = (path: string) => readFileSync(fileURLToPath(new URL(`../../../${path}`, import.meta.url)), 'utf8');

interface Locked {
  version: string;
  integrity?: string;
  license?: string;
  dev?: boolean;
  link?: boolean;
  hasInstallScript?: boolean;
}

const own = JSON.parse(read('package.json')) as Record<'dependencies' | 'devDependencies', Record<string, string>>;
const lock = JSON.parse(read('package-lock.json')) as { packages: Record<string, Locked> };
const packages = Object.entries(lock.packages).filter(([path]) => path !== '');
const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

const PERMISSIVE = new Set([
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'MIT OR Apache-2.0',
  '(MIT AND Zlib)',
  '(MIT OR CC0-1.0)',
]);

/** Packages that say their licence elsewhere than in one word, and what their LICENSE file says. */
const SAID_IN_A_FILE: Readonly<Record<string, RegExp>> = {
  'dejavu-fonts-ttf': /Permission is hereby granted, free of charge/,
  'webgl-constants': /^MIT License/,
  jstat: /Permission is hereby granted, free of charge/,
  // Its package.json has a slip in the name of the licence.
  'splaytree-ts': /Redistribution and use in source and binary forms/,
};

/** Licences that ask something of who passes the package on; tools that stay on the developer's machine may have them. */
const FOR_TOOLS = /^(MPL-2\.0|CC-BY-4\.0|(Apache-2\.0 AND )?LGPL-3\.0-or-later( AND MIT)?)$/;

describe('packages', () => {
  it('are asked for by an exact version each, which is the one that the lock file has', () => {
    for (const [name, version] of Object.entries({ ...own.dependencies, ...own.devDependencies })) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
      expect(lock.packages[`node_modules/${name}`]?.version, name).toBe(version);
    }
  });

  it('come from the registry alone, each with its checksum', () => {
    expect(packages.length).toBeGreaterThan(100);
    for (const [path, { integrity, link }] of packages) {
      expect(link, path).toBeUndefined();
      expect(integrity, path).toMatch(/^sha512-/);
    }
  });

  it('run nothing when they are installed', () => {
    expect(read('.npmrc')).toMatch(/^ignore-scripts=true$/m);
    expect(packages.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => nameOf(path))).toEqual([
      'esbuild',
    ]);
  });

  it('that go into the app have a permissive licence, tools one that lets them be used', () => {
    const others = packages.filter(([path, { license = '', dev }]) => {
      const words = SAID_IN_A_FILE[nameOf(path)];
      if (words) return !words.test(read(`${path}/LICENSE`));
      return !PERMISSIVE.has(license) && !(dev && FOR_TOOLS.test(license));
    });
    expect(others.map(([path, { license }]) => `${path} ${license}`)).toEqual([]);
  });
});
