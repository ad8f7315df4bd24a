import { useSyncExternalStore } from 'react';
import { pageNames } from '../../guide';

export const siteParts = ['readings', 'scan', 'truth', 'holes', 'basics'] as const;
export type SitePart = (typeof siteParts)[number];

export const vanParts = ['materials', 'work', 'pieces'] as const;
export type VanPart = (typeof vanParts)[number];

export const clientParts = ['look', 'choices', 'price', 'send'] as const;
export type ClientPart = (typeof clientParts)[number];

export const guideNames = [...pageNames, 'all'] as const;
/** A page of the guide, or all of those for the user. */
export type GuideName = (typeof guideNames)[number];

const panels = ['back', 'left', 'right'];
export const benchGroups = ['trim', 'legs', 'shelves', 'fillers', 'sheets', 'ways', 'beds'] as const;
export type BenchGroup = (typeof benchGroups)[number];

/** Where in the app one is; kept in the address, so that back and forward work. */
export type Place =
  | { name: 'site'; part: SitePart }
  /** `item`: a panel, a piece by its id in the result, or a group of pieces */
  | { name: 'bench'; item: string }
  | { name: 'van'; part: VanPart }
  | { name: 'jobs' }
  | { name: 'client'; part: ClientPart }
  /** `section`: a heading of the page, as it stands in addresses */
  | { name: 'guide'; page: GuideName; section: string | null }
  /** a job that came in the address itself */
  | { name: 'link'; text: string };

export function placeOf(hash: string): Place {
  if (/^#?link\//.test(hash)) return { name: 'link', text: hash };
  const [name, part, section] = hash.replace(/^#\/?/, '').split('/');
  if (name === 'bench') return { name, item: benchItem(decoded(part ?? '')) };
  if (name === 'van') return { name, part: vanParts.find((each) => each === part) ?? 'materials' };
  if (name === 'jobs') return { name };
  if (name === 'client') return { name, part: clientParts.find((each) => each === part) ?? 'look' };
  if (name === 'guide') {
    const page = guideNames.find((each) => each === part);
    return { name, page: page ?? 'start', section: page && section ? section : null };
  }
  return { name: 'site', part: siteParts.find((each) => each === part) ?? 'readings' };
}

export function addressOf(place: Place): string {
  if (place.name === 'jobs') return '#jobs';
  if (place.name === 'link') return place.text;
  if (place.name === 'guide') return `#guide/${place.page}${place.section ? `/${place.section}` : ''}`;
  return place.name === 'bench' ? `#bench/${encodeURIComponent(place.item)}` : `#${place.name}/${place.part}`;
}

function benchItem(item: string): string {
  const [group] = item.split('.');
  return panels.includes(item) || benchGroups.some((each) => each === group) ? item : 'back';
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}

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
