import type { PanelName } from '../../core';

export const panelWords: readonly (readonly [PanelName, string])[] = [
  ['left', 'Left'],
  ['back', 'Back'],
  ['right', 'Right'],
];

export const panelTitle: Record<PanelName, string> = {
  back: 'Back panel',
  left: 'Left side panel',
  right: 'Right side panel',
};

/** The panel that an item is; null for a piece or nothing. */
export const panelOf = (item: string | null): PanelName | null =>
  panelWords.find(([name]) => name === item)?.[0] ?? null;
