import type { Vec3 } from '../../geometry';
import type { Room } from './room';

/** Whether a place in the alcove is seen from the room: the line of sight passes between the two front edges. */
export function throughOpening(
  { left, right, front }: Pick<Room, 'left' | 'right' | 'front'>,
  [x, , z]: Vec3,
  [eyeX, , eyeZ]: Vec3,
): boolean {
  if (eyeZ <= front || z >= front) return true;
  const crossing = x + ((eyeX - x) * (front - z)) / (eyeZ - z);
  return crossing > left && crossing < right;
}
