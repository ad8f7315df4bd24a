import { create } from 'zustand';

/** How the alcove is drawn; not part of the job. */
interface DrawingState {
  /** times further out of true than it is */
  factor: number;
  /** panels drawn off their walls, mm */
  off: number;
  showPanels: boolean;
  tags: boolean;
  set(part: Partial<Pick<DrawingState, 'factor' | 'off' | 'showPanels' | 'tags'>>): void;
}

export const mostExaggerated = 20;
export const furthestOff = 400;

export const useDrawing = create<DrawingState>()((set) => ({ factor: 5, off: 0, showPanels: true, tags: true, set }));
