import { useSyncExternalStore } from 'react';

const query = '(prefers-reduced-motion: reduce)';

const watch = (changed: () => void) => {
  const media = window.matchMedia(query);
  media.addEventListener('change', changed);
  return () => media.removeEventListener('change', changed);
};

/** True where the person asked for less motion. */
export const useCalm = (): boolean => useSyncExternalStore(watch, () => window.matchMedia(query).matches);
