import { useLayoutEffect, useRef } from 'react';

/** Once no place is in hand, the focus that was in the entry goes to the place on the drawing, or where Tab stops there. */
export function useFocusHandedBack(place: string | null): void {
  const left = useRef<string | null>(null);
  useLayoutEffect(() => {
    const before = left.current;
    left.current = place;
    if (place !== null || before === null || document.activeElement !== document.body) return;
    const button =
      document.querySelector<HTMLElement>(`[data-place="${CSS.escape(before)}"]`) ??
      document.querySelector<HTMLElement>('[data-place][tabindex="0"]');
    button?.focus();
  }, [place]);
}
