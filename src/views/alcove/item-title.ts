import type { PanelName, Result } from '../../core';
import { capital } from '../../output';
import { allPieces } from './all-pieces';
import { panelTitle } from './panel-words';

/** What a panel, or a piece by its id, is called; the id itself where there is no such piece. */
export function itemTitle(item: string, result: Pick<Result, 'pieces'> | null): string {
  const panel = panelTitle[item as PanelName] as string | undefined;
  const piece = result ? allPieces(result).find(({ id }) => id === item) : undefined;
  return panel ?? capital(piece?.name ?? item);
}
