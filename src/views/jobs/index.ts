import { loaded } from '../parts';

/** Loaded when it is first entered. */
export const Jobs = loaded(async () => (await import('./Jobs')).Jobs);
