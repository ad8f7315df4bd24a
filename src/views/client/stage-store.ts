import { create } from 'zustand';
import type { Layers, Viewpoint } from '../../scene';

/** How the finished alcove is looked at; not part of the job. */
interface StageState {
  viewpoint: Viewpoint;
  /** height of the person through whose eyes it is seen, mm */
  person: number;
  layers: Layers;
  dimensions: boolean;
  /** how far the bare walls lean */
  leans: boolean;
  /** counts up each time a viewpoint is asked for */
  asked: number;
  set(part: Partial<Omit<StageState, 'set'>>): void;
}

export const useStage = create<StageState>()((set) => ({
  viewpoint: 'door',
  person: 1700,
  layers: { panels: true, trim: true, shelves: true, fixtures: true, sealant: true },
  dimensions: false,
  leans: true,
  asked: 0,
  set,
}));

export const viewpointWords: readonly (readonly [Viewpoint, string])[] = [
  ['door', 'From the door'],
  ['eye', 'At eye height'],
  ['tub', 'From the tub'],
];
