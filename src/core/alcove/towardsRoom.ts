import type { WallName } from '../job-file';

/** Which way the room lies from a surface, along its own height: −1 from the right wall, +1 from the others. */
export const towardsRoom = (surface: WallName | 'rim'): 1 | -1 => (surface === 'right' ? -1 : 1);
