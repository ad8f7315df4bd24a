import { type ComponentType, type LazyExoticComponent, lazy } from 'react';
import { whenTouched } from './useTouched';

/**
 * A component whose code is loaded as soon as somebody is there, so that it is still there when the signal is gone, or
 * before that where it is shown first.
 */
export function loadedSoon<Props>(
  load: () => Promise<ComponentType<Props>>,
): LazyExoticComponent<ComponentType<Props>> {
  // Where this fails it is loaded again when it is shown.
  whenTouched()
    .then(load)
    .catch(() => undefined);
  return lazy(async () => ({ default: await load() }));
}
