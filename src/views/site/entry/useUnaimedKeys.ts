import { type RefObject, useEffect } from 'react';
import { flushSync } from 'react-dom';
import type { EntryStore } from '../survey';
import { useSurvey } from '../survey';
import { pasted } from './pasted';

const takesText = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable], [role="menu"]') !== null;

/**
 * Figures that arrive while no field has the focus begin an entry: at the place that has the focus on the drawing, else at
 * the next one of the plan. So a laser measure that types like a keyboard needs no tap.
 */
export function useUnaimedKeys(entry: EntryStore, input: RefObject<HTMLInputElement | null>): void {
  const { survey } = useSurvey();
  useEffect(() => {
    const begin = (target: EventTarget | null) => {
      const key =
        target instanceof HTMLElement ? target.closest<HTMLElement>('[data-place]')?.dataset.place : undefined;
      const place = survey.places.find((each) => each.key === key);
      const { active, open, openNext } = entry.getState();
      if (place) flushSync(() => open(place));
      else if (!active) flushSync(openNext);
      input.current?.focus({ preventScroll: true });
      input.current?.select();
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || takesText(event.target)) return;
      if (/^[\d.]$/.test(event.key)) begin(event.target);
    };
    const onPaste = (event: ClipboardEvent) => {
      if (takesText(event.target)) return;
      const texts = pasted(event.clipboardData?.getData('text') ?? '');
      if (texts.length === 0 || !/\d/.test(texts[0] ?? '')) return;
      event.preventDefault();
      begin(event.target);
      if (texts.length === 1) entry.getState().put({ text: texts[0]!, fresh: false });
      else entry.getState().enterAll(texts);
    };
    document.addEventListener('keydown', onKey);
    document.addEventListener('paste', onPaste);
    return () => {
      document.removeEventListener('keydown', onKey);
      document.removeEventListener('paste', onPaste);
    };
  }, [entry, input, survey]);
}
