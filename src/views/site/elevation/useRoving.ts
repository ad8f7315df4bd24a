import { type KeyboardEvent, useState } from 'react';

/** One stop of the Tab key for many buttons; arrows, Home and End go through them in order. */
export function useRoving(keys: readonly string[], current: string | null) {
  const [last, setLast] = useState<string | null>(null);
  const stop = [last, current].find((key) => key !== null && keys.includes(key)) ?? keys[0] ?? null;
  return {
    focused: last,
    tabIndex: (key: string) => (key === stop ? 0 : -1),
    onFocus: setLast,
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
      event.currentTarget.querySelector<HTMLElement>(`[data-place="${CSS.escape(key)}"]`)?.focus();
    },
  };
}
