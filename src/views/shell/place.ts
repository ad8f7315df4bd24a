import { useSyncExternalStore } from 'react';
import type { PanelName } from '../../core';

/** Where in the app one is; kept in the address, so that back and forward work. */
export type Place = { name: 'site' } | { name: 'bench'; panel: PanelName };

const panels: readonly string[] = ['back', 'left', 'right'] satisfies PanelName[];

export function placeOf(hash: string): Place {
  const [name, panel] = hash.replace(/^#\/?/, '').split('/');
  if (name !== 'bench') return { name: 'site' };
  return { name, panel: panel !== undefined && panels.includes(panel) ? (panel as PanelName) : 'back' };
}

export const addressOf = (place: Place): string => (place.name === 'bench' ? `#bench/${place.panel}` : '#site');

const watch = (changed: () => void) => {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
};

export function usePlace(): Place {
  const hash = useSyncExternalStore(watch, () => window.location.hash);
  return placeOf(hash);
}

export function goTo(place: Place): void {
  window.location.hash = addressOf(place);
}
