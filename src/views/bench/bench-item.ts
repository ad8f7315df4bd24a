import type { PanelName, Piece, Result } from '../../core';
import { capital } from '../../output';
import { panelTitle, panelWords } from '../alcove';
import type { BenchGroup } from '../place';

export type Group = 'panels' | BenchGroup;

/** What the bench shows: a panel, its way in, its bed or a piece of a group, or a group that has no piece. */
export interface BenchItem {
  group: Group;
  panel: PanelName | null;
  piece: Piece | null;
  /** the group's items and their names */
  siblings: (readonly [item: string, words: string])[];
}

const panelItems = panelWords.map(([name, words]) => [name as string, words] as const);

/** Panels in the order in which they are looked at on their way in. */
const wayItems = panelWords.map(([name, words]) => [`ways.${name}`, words] as const);

/** How each panel's sheet sits. */
const bedItems = panelWords.map(([name, words]) => [`beds.${name}`, words] as const);

/** What an address stands for in a result; the first piece of its group where there is no such piece. */
export function benchItem(item: string, { pieces }: Pick<Result, 'pieces'>): BenchItem {
  if (item in panelTitle) return { group: 'panels', panel: item as PanelName, piece: null, siblings: [...panelItems] };
  const [group, rest] = item.split('.') as [BenchGroup, string | undefined];
  if (group === 'ways' || group === 'beds') {
    const panel = panelItems.find(([name]) => name === rest)?.[0] ?? 'back';
    return { group, panel: panel as PanelName, piece: null, siblings: group === 'ways' ? wayItems : bedItems };
  }
  const all = group === 'sheets' ? [] : pieces[group];
  const piece = all.find(({ id }) => id === item) ?? all[0] ?? null;
  return { group, panel: null, piece, siblings: all.map(({ id, name }) => [id, capital(name)] as const) };
}
