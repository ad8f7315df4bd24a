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
