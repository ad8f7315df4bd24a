import { useSyncExternalStore } from 'react';

const signs = ['pointerdown', 'pointermove', 'touchstart', 'wheel', 'scroll', 'keydown'] as const;

let touched = false;
const waiting = new Set<() => void>();

function onTouch(): void {
  touched = true;
  for (const sign of signs) window.removeEventListener(sign, onTouch, true);
  for (const tell of waiting) tell();
}

if (typeof window !== 'undefined') {
  for (const sign of signs) window.addEventListener(sign, onTouch, { capture: true, passive: true });
}

const watch = (tell: () => void) => {
  waiting.add(tell);
  return () => waiting.delete(tell);
};

/** True from the first sign that somebody is there: a touch, a move of the pointer, a key. What is large loads after it. */
export const useTouched = (): boolean => useSyncExternalStore(watch, () => touched);

/** Settles at the first sign that somebody is there. */
export const whenTouched = (): Promise<void> =>
  new Promise((resolve) => {
    if (touched) resolve();
    else waiting.add(resolve);
  });
