import { createStore } from 'zustand/vanilla';

/** `ready`: a newer version waits; `replaced`: another page has brought it in already. */
export type Update = 'none' | 'ready' | 'replaced';

export const updates = createStore<{ update: Update }>()(() => ({ update: 'none' }));

let registration: ServiceWorkerRegistration | null = null;
let applying = false;

/**
 * Keeps every file of the app at hand for when the network is off. A newer version waits until it is asked for, or
 * until all pages of the app have been closed.
 */
export async function keepAtHand(address = './sw.js'): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const { serviceWorker } = navigator;
  let controlled = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (applying) window.location.reload();
    else if (controlled) updates.setState({ update: 'replaced' });
    controlled = true;
  });
  try {
    const known = await serviceWorker.register(address);
    registration = known;
    const look = () => {
      if (known.waiting && serviceWorker.controller) updates.setState({ update: 'ready' });
    };
    look();
    known.addEventListener('updatefound', () => known.installing?.addEventListener('statechange', look));
    window.addEventListener('online', () => void known.update().catch(() => undefined));
  } catch {
    // Without it the app works as long as the network does.
  }
}

/** Loads the newer version. */
export function applyUpdate(): void {
  applying = true;
  const waiting = registration?.waiting;
  if (waiting) waiting.postMessage({ type: 'SKIP_WAITING' });
  else window.location.reload();
}
