import type { Result } from '../../core';

/** Type of about 13 px where a figure of all walls is about 750 px wide, mm on the walls. */
export function typeSize({ panels }: Pick<Result, 'panels'>): number {
  const width = (['left', 'back', 'right'] as const).reduce((sum, name) => {
    const us = panels[name].outline.map(([u]) => u);
    return sum + Math.max(...us) - Math.min(...us);
  }, 0);
  return width / 50;
}
