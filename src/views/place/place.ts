import { useSyncExternalStore } from 'react';
import type { PanelName } from '../../core';

export const siteParts = ['readings', 'truth', 'holes', 'basics'] as const;
export type SitePart = (typeof siteParts)[number];

export const vanParts = ['materials', 'work', 'pieces'] as const;
export type VanPart = (typeof vanParts)[number];

const panels: readonly PanelName[] = ['back', 'left', 'right'];

/** Where in the app one is; kept in the address, so that back and forward work. */
export type Place =
  | { name: 'site'; part: SitePart }
  | { name: 'bench'; panel: PanelName }
  | { name: 'van'; part: VanPart };

export function placeOf(hash: string): Place {
  const [name, part] = hash.replace(/^#\/?/, '').split('/');
  if (name === 'bench') return { name, panel: panels.find((panel) => panel === part) ?? 'back' };
  if (name === 'van') return { name, part: vanParts.find((each) => each === part) ?? 'materials' };
  return { name: 'site', part: siteParts.find((each) => each === part) ?? 'readings' };
}

export const addressOf = (place: Place): string =>
  place.name === 'bench' ? `#bench/${place.panel}` : `#${place.name}/${place.part}`;

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
