import { create } from 'zustand';
import type { Reference, Section } from '../../scene';

/** How the heat map is drawn and where it is cut; not part of the job. */
interface HeatState {
  reference: Reference;
  /** mm from contour to contour; null: the finest that does not crowd */
  step: number | null;
  section: Section;
  set(part: Partial<Pick<HeatState, 'reference' | 'step'>>): void;
  cut(part: Partial<Section>): void;
}

export const useHeat = create<HeatState>()((set) => ({
  reference: 'plumb',
  step: null,
  section: { wall: 'back', cut: 'upright', share: 0.5 },
  set,
  cut: (part) => set(({ section }) => ({ section: { ...section, ...part } })),
}));
