import type { ThreeEvent } from '@react-three/fiber';

/** Pointer travel beyond which a press turns the view and picks nothing, px. */
const still = 6;

/** Picks what is foremost under the pointer. */
export const picking = (onPick: () => void) => (event: ThreeEvent<MouseEvent>) => {
  if (event.delta > still) return;
  event.stopPropagation();
  onPick();
};
