import type { PanelName, Problem } from '../../core';
import { panelTitle } from '../alcove';

const panelPath = /^panels\.(back|left|right)(?:\.holes\.(.+)|\.(.+))?$/;

/** Where a problem lies, in words, and the panel that shows it. */
export function problemPlace({ where }: Problem): { words: string; panel: PanelName | null } {
  const found = panelPath.exec(where);
  if (!found) return { words: where, panel: null };
  const panel = found[1] as PanelName;
  const part = found[2] ?? found[3];
  return { words: part ? `${panelTitle[panel]}, ${part}` : panelTitle[panel], panel };
}
