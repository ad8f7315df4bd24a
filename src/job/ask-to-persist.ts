/** Asks the browser not to clear what is kept when it runs out of room. Some browsers ask the person. */
export function askToPersist(): void {
  if (typeof navigator === 'undefined') return;
  navigator.storage?.persist?.().catch(() => undefined);
}
