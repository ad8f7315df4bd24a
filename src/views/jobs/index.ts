import { lazy } from 'react';

/** Loaded when it is first entered. */
export const Jobs = lazy(async () => ({ default: (await import('./Jobs')).Jobs }));
