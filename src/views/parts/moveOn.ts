import type { KeyboardEvent } from 'react';

/** Enter goes on to the next entry field of the page. */
export function moveOn(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key !== 'Enter') return;
  event.preventDefault();
  const fields = [...document.querySelectorAll<HTMLInputElement>('input[data-entry]')];
  const next = fields[fields.indexOf(event.currentTarget) + 1];
  if (next) next.focus();
  else event.currentTarget.blur();
}
