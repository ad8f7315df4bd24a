import type { Fit, Job } from '../../../core';
import type { FieldPath } from '../../../job';

/** How pieces come to lie on their sheets: factory edges kept, a pattern centred, or as little sheet as possible. */
export type CutRule = 'keep' | 'centre' | 'least';

const panels = ['back', 'left', 'right'] as const;

export function cutRule({ cutting, fit }: Pick<Job, 'cutting' | 'fit'>): CutRule {
  if (cutting.sheets === 'least') return 'least';
  return panels.every((panel) => fit.keep[panel].length === 0) ? 'centre' : 'keep';
}

/** What to set for a rule; factory edges already kept stay kept, and are the top ones where none was. */
export function ruleChoices(rule: CutRule, keep: Fit['keep']): [FieldPath, unknown][] {
  const sheets: [FieldPath, unknown] = [['cutting', 'sheets'], rule === 'least' ? 'least' : 'own'];
  if (rule === 'least') return [sheets];
  const none = { back: [], left: [], right: [] };
  const kept = panels.some((panel) => keep[panel].length > 0) ? keep : { back: ['top'], left: ['top'], right: ['top'] };
  return [sheets, [['fit', 'keep'], rule === 'centre' ? none : kept]];
}
