import { type RefObject, useEffect } from 'react';
import { canTakeFocus } from '../parts';

/**
 * Focus that was in what this holds, and goes with it, returns to what had it before; where that is gone too, to the main
 * part of the page.
 */
export function useFocusBack(within: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const held = within.current;
    if (held === null) return;
    let before: HTMLElement | null = null;
    let inside = false;
    const follow = ({ target }: FocusEvent) => {
      if (!(target instanceof HTMLElement)) return;
      inside = held.contains(target);
      if (!inside) before = target;
    };
    const observer = new MutationObserver(() => {
      if (!inside || document.activeElement !== document.body) return;
      inside = false;
      const place = before?.isConnected && canTakeFocus(before) ? before : null;
      (place ?? document.querySelector<HTMLElement>('main'))?.focus({ preventScroll: place === null });
    });
    document.addEventListener('focusin', follow);
    observer.observe(held, { childList: true, subtree: true });
    return () => {
      document.removeEventListener('focusin', follow);
      observer.disconnect();
    };
  }, [within]);
}
