import type { LaunchOptions } from '@playwright/test';
import { findBrowser } from './findBrowser';
import { thisMachine } from './thisMachine';

/** How to start the browser that this machine has: also as root, with WebGL drawn in software. */
export function browserLaunch(): LaunchOptions {
  const { path, env } = findBrowser(thisMachine);
  return {
    executablePath: path,
    env: { ...definedOnly(process.env), ...env },
    args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
  };
}

function definedOnly(env: NodeJS.ProcessEnv): Record<string, string> {
  return Object.fromEntries(Object.entries(env).filter((entry): entry is [string, string] => entry[1] !== undefined));
}
