import { type FocusEvent, type KeyboardEvent, useLayoutEffect, useRef, useState } from 'react';

/**
 * One stop of the Tab key for many buttons, each marked `data-place`; arrows, Home and End go through them in order. The
 * stop follows what is in hand. Where the button with the focus goes, the one now in its turn takes the focus.
 */
export function useRoving(keys: readonly string[], current: string | null) {
  const [last, setLast] = useState<string | null>(current);
  const [followed, setFollowed] = useState(current);
  const box = useRef<HTMLDivElement>(null);
  const holds = useRef(false);
  const turn = useRef(0);
  if (current !== followed) {
    setFollowed(current);
    if (current !== null) setLast(current);
  }
  const stop = last !== null && keys.includes(last) ? last : (keys[Math.min(turn.current, keys.length - 1)] ?? null);
  const focus = (key: string) => placeIn(box.current, key)?.focus();
  useLayoutEffect(() => {
    turn.current = Math.max(0, keys.indexOf(stop ?? ''));
    if (holds.current && stop !== null && document.activeElement === document.body) focus(stop);
  });
  return {
    box,
    focused: last,
    tabIndex: (key: string) => (key === stop ? 0 : -1),
    onFocus: (key: string) => {
      holds.current = true;
      setLast(key);
    },
    onBlur: ({ target }: FocusEvent) => {
      if (target.isConnected) holds.current = false;
    },
    onKeyDown: (event: KeyboardEvent<HTMLElement>) => {
      const at = keys.indexOf(stop ?? '');
      const to = {
        ArrowRight: at + 1,
        ArrowDown: at + 1,
        ArrowLeft: at - 1,
        ArrowUp: at - 1,
        Home: 0,
        End: keys.length - 1,
      }[event.key];
      const key = to === undefined ? undefined : keys[(to + keys.length) % keys.length];
      if (key === undefined) return;
      event.preventDefault();
      focus(key);
    },
  };
}

const placeIn = (box: HTMLElement | null, key: string) =>
  box?.querySelector<HTMLElement>(`[data-place="${CSS.escape(key)}"]`);
