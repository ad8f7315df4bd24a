import type { Job, WallName } from '../job-file';

/** The order in which panels are set: the back panel, the dry side, then the wet wall. */
export const settingOrder = ({ fit: { wetWall } }: Pick<Job, 'fit'>): readonly WallName[] =>
  wetWall === 'left' ? ['back', 'right', 'left'] : ['back', 'left', 'right'];
