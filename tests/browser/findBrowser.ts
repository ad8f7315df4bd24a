import { posix, win32 } from 'node:path';

/** A browser to run tests in: the program, and what its environment needs besides the usual. */
export interface Browser {
  path: string;
  env: Record<string, string>;
  /** Where it was found, for the log. */
  source: string;
}

/** What the search looks at; the real machine, or a made-up one in a test. */
export interface Machine {
  platform: NodeJS.Platform;
  arch: string;
  env: Record<string, string | undefined>;
  isProgram(path: string): boolean;
  /** Where the test runner would keep a browser of its own, whether it is there or not. */
  runnersOwn(): string | null;
  /** Unpacks the browser that comes as a package; null where it does not run or is not installed. */
  unpack(): Omit<Browser, 'source'> | null;
}

const VARIABLES = ['CHROMIUM_PATH', 'CHROME_PATH'] as const;

const PROGRAMS = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'microsoft-edge'];

/**
 * Finds a Chromium: the one named in CHROMIUM_PATH or CHROME_PATH, one on the PATH, one in a usual place, the test
 * runner's own, or the packaged one.
 * @throws Error when a variable names no program, or there is no browser at all
 */
export function findBrowser(machine: Machine): Browser {
  return named(machine) ?? installed(machine) ?? runnersOwn(machine) ?? packaged(machine) ?? none();
}

function named({ env, isProgram }: Machine): Browser | null {
  for (const variable of VARIABLES) {
    const path = env[variable];
    if (!path) continue;
    if (!isProgram(path)) throw new Error(`${variable} is "${path}", and that is no program. Correct it or unset it.`);
    return { path, env: {}, source: variable };
  }
  return null;
}

function installed(machine: Machine): Browser | null {
  const path = [...onPath(machine), ...usualPlaces(machine)].find(machine.isProgram);
  return path === undefined ? null : { path, env: {}, source: 'installed' };
}

function onPath({ platform, env }: Machine): string[] {
  const { delimiter, join } = platform === 'win32' ? win32 : posix;
  const folders = (env.PATH ?? env.Path ?? '').split(delimiter).filter((folder) => folder !== '');
  const ending = platform === 'win32' ? '.exe' : '';
  return PROGRAMS.flatMap((program) => folders.map((folder) => join(folder, program + ending)));
}

function usualPlaces({ platform, env }: Machine): string[] {
  if (platform === 'darwin') {
    const roots = ['/Applications', ...(env.HOME ? [posix.join(env.HOME, 'Applications')] : [])];
    return ['Chromium', 'Google Chrome', 'Microsoft Edge'].flatMap((app) =>
      roots.map((root) => posix.join(root, `${app}.app`, 'Contents', 'MacOS', app)),
    );
  }
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter((root) => root !== undefined);
    return ['Chromium\\Application\\chrome.exe', 'Google\\Chrome\\Application\\chrome.exe'].flatMap((program) =>
      roots.map((root) => win32.join(root, program)),
    );
  }
  return [
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome-stable',
    '/opt/google/chrome/chrome',
    '/snap/bin/chromium',
  ];
}

function runnersOwn(machine: Machine): Browser | null {
  const path = machine.runnersOwn();
  return path !== null && machine.isProgram(path) ? { path, env: {}, source: "the test runner's own" } : null;
}

function packaged(machine: Machine): Browser | null {
  if (machine.platform !== 'linux' || machine.arch !== 'x64') return null;
  const unpacked = machine.unpack();
  return unpacked && { ...unpacked, source: 'package' };
}

function none(): never {
  throw new Error('No Chromium or Chrome found. Install one, or set CHROMIUM_PATH to its program.');
}
