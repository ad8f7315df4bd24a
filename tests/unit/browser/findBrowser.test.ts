import { describe, expect, it } from 'vitest';
import { findBrowser, type Machine } from '../../browser/findBrowser';

interface Made {
  platform?: NodeJS.Platform;
  arch?: string;
  env?: Record<string, string>;
  programs?: string[];
  runnersOwn?: string;
  packaged?: boolean;
}

function machine({ platform = 'linux', arch = 'x64', env = {}, programs = [], runnersOwn, packaged }: Made): Machine {
  return {
    platform,
    arch,
    env,
    isProgram: (path) => programs.includes(path),
    runnersOwn: () => runnersOwn ?? null,
    unpack: () => (packaged ? { path: '/kept/chromium', env: { LD_LIBRARY_PATH: '/kept/lib' } } : null),
  };
}

const found = (made: Made): string => {
  const { source, path } = findBrowser(machine(made));
  return `${source}: ${path}`;
};

const EVERYTHING: Made = {
  env: { CHROMIUM_PATH: '/my/chromium', CHROME_PATH: '/my/chrome', PATH: '/a:/b' },
  programs: ['/my/chromium', '/my/chrome', '/b/google-chrome', '/usr/bin/chromium', '/runner/chrome'],
  runnersOwn: '/runner/chrome',
  packaged: true,
};

describe('findBrowser', () => {
  it('takes them in order: variables, PATH, usual places, runner, package', () => {
    expect(found(EVERYTHING)).toBe('CHROMIUM_PATH: /my/chromium');
    expect(found({ ...EVERYTHING, env: { CHROME_PATH: '/my/chrome' } })).toBe('CHROME_PATH: /my/chrome');
    expect(found({ ...EVERYTHING, env: { PATH: '/a:/b' } })).toBe('installed: /b/google-chrome');
    expect(found({ ...EVERYTHING, env: {} })).toBe('installed: /usr/bin/chromium');
    expect(found({ ...EVERYTHING, env: {}, programs: ['/runner/chrome'] })).toBe(
      "the test runner's own: /runner/chrome",
    );
    expect(found({ ...EVERYTHING, env: {}, programs: [] })).toBe('package: /kept/chromium');
  });

  it('takes an empty variable for an unset one', () => {
    expect(found({ ...EVERYTHING, env: { CHROMIUM_PATH: '' } })).toBe('installed: /usr/bin/chromium');
  });

  it('refuses a variable that names no program, rather than test in another browser', () => {
    expect(() => found({ ...EVERYTHING, env: { CHROMIUM_PATH: '/gone' } })).toThrow(
      'CHROMIUM_PATH is "/gone", and that is no program. Correct it or unset it.',
    );
  });

  it('knows the usual places of macOS and Windows', () => {
    const mac = '/Users/me/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
    expect(found({ platform: 'darwin', env: { HOME: '/Users/me' }, programs: [mac] })).toBe(`installed: ${mac}`);
    const windows = 'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe';
    const env = { PROGRAMFILES: 'C:\\Program Files', PATH: 'C:\\Windows' };
    expect(found({ platform: 'win32', env, programs: [windows] })).toBe(`installed: ${windows}`);
    const onPath = 'D:\\tools\\chrome.exe';
    expect(found({ platform: 'win32', env: { Path: 'C:\\Windows;D:\\tools' }, programs: [onPath] })).toBe(
      `installed: ${onPath}`,
    );
  });

  it('gives the packaged browser the libraries that came with it', () => {
    expect(findBrowser(machine({ packaged: true })).env).toEqual({ LD_LIBRARY_PATH: '/kept/lib' });
  });

  it.each([{ arch: 'arm64', packaged: true }, { platform: 'darwin', packaged: true } as const, { packaged: false }])(
    'says what to do where there is none: %o',
    (made) => {
      expect(() => found(made)).toThrow(
        'No Chromium or Chrome found. Install one, or set CHROMIUM_PATH to its program.',
      );
    },
  );
});
