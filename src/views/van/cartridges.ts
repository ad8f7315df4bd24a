import { CARTRIDGES } from '../../core';
import { cartridgeName } from '../../output';

/** The common sizes to choose from, and the one in hand where it is another. */
export function cartridgeChoices(contents: number): [value: string, words: string][] {
  const common = Object.entries(CARTRIDGES).map(([name, size]): [string, string] => [String(size), name]);
  return cartridgeName(contents) === null ? [...common, [String(contents), 'another size']] : common;
}

/** Which of the choices holds. */
export function cartridgeChoice(contents: number): string {
  const name = cartridgeName(contents);
  return String(name === null ? contents : CARTRIDGES[name as keyof typeof CARTRIDGES]);
}
