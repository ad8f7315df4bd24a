import { useLayoutEffect, useRef } from 'react';

/** Once no place is in hand, the focus that was in the entry goes to where Tab stops on the drawing: the place left. */
export function useFocusHandedBack(inHand: boolean): void {
  const before = useRef(false);
  useLayoutEffect(() => {
    if (before.current && !inHand && document.activeElement === document.body) {
      document.querySelector<HTMLElement>('[data-place][tabindex="0"]')?.focus();
    }
    before.current = inHand;
  }, [inHand]);
}
