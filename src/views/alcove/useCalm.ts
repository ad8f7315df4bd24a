import { useSyncExternalStore } from 'react';

let list: MediaQueryList | null = null;
const lessMotion = (): MediaQueryList => {
  list ??= window.matchMedia('(prefers-reduced-motion: reduce)');
  return list;
};

const watch = (changed: () => void) => {
  lessMotion().addEventListener('change', changed);
  return () => lessMotion().removeEventListener('change', changed);
};

/** True where the person asked for less motion. */
export const useCalm = (): boolean => useSyncExternalStore(watch, () => lessMotion().matches);
