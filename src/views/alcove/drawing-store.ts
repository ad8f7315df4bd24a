import { create } from 'zustand';
import type { DryFit, Result, WallName } from '../../core';
import type { Layer } from '../../scene';

/** How the alcove is drawn; not part of the job. */
interface DrawingState {
  /** times further out of true than it is */
  factor: number;
  /** panels drawn off their walls, mm */
  off: number;
  layers: Record<Layer, boolean>;
  tags: boolean;
  /** places on the walls, mm, between which a reading is shown up */
  traced: readonly { wall: WallName; at: number; height: number }[] | null;
  /** the virtual dry fit and the result that it was tried on */
  tried: { of: Result; dryFit: DryFit } | null;
  set(part: Partial<Omit<DrawingState, 'set' | 'show'>>): void;
  show(layer: Layer, on: boolean): void;
}

export const mostExaggerated = 20;
export const furthestOff = 400;

export const useDrawing = create<DrawingState>()((set) => ({
  factor: 5,
  off: 0,
  layers: { walls: true, panels: true, slivers: true, trim: true, legs: true, shelves: true },
  tags: true,
  traced: null,
  tried: null,
  set,
  show: (layer, on) => set(({ layers }) => ({ layers: { ...layers, [layer]: on } })),
}));
