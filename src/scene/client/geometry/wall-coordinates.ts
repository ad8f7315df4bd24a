import type { PanelName, Point } from '../../../core';
import type { Vec3 } from '../../geometry';

/** Wall coordinates (u, v) of a point on or before a wall: the way back from `onWall`. */
export const onWallCoordinates = (wall: PanelName, [x, y, z]: Vec3): Point => (wall === 'back' ? [x, y] : [z, y]);
