import type { Point } from '../../core';
import type { Rectangle } from '../drawing';

/**
 * What a line or area means. `panel`: a panel or a piece; `hole`; `wet`: a joint for sealant; `room`: a joint for
 * paintable caulk; `adhesive`: a dot or bead; `strip`: double-faced strip; `measure`: from a thing to its figure;
 * `wall`, `top`, `side`: parts of the picture of the alcove; `bed-0` to `bed-4`: a bed, thicker and thicker.
 */
export type Look =
  | 'panel'
  | 'hole'
  | 'wet'
  | 'room'
  | 'adhesive'
  | 'strip'
  | 'measure'
  | 'wall'
  | 'top'
  | 'side'
  | BedLook;
type BedLook = 'bed-0' | 'bed-1' | 'bed-2' | 'bed-3' | 'bed-4';

export type FigureShape =
  | { kind: 'path'; points: Point[]; closed: boolean; look: Look }
  | { kind: 'disc'; centre: Point; radius: number; look: Look }
  /** `at`: on the baseline; the height of type is the figure's `size` */
  | { kind: 'label'; text: string; at: Point; anchor: 'start' | 'middle' | 'end'; bold: boolean };

/** A small drawing for paper and screen, first coordinate to the right, second up; later shapes cover earlier ones. */
export interface Figure {
  /** what it shows, for who cannot see it */
  title: string;
  bounds: Rectangle;
  /** height of type in the figure's own unit */
  size: number;
  shapes: FigureShape[];
}

/**
 * How a look is painted: line width and dashes in mm on the paper, grays from 0 black to 1 white. Reads in black and
 * white.
 */
export interface Paint {
  width: number;
  gray: number;
  dash?: number[];
  fill?: number;
}

export const paints: Record<Look, Paint> = {
  panel: { width: 0.25, gray: 0, fill: 1 },
  hole: { width: 0.3, gray: 0, fill: 1 },
  wet: { width: 0.75, gray: 0 },
  room: { width: 0.45, gray: 0, dash: [1.6, 1] },
  adhesive: { width: 0.12, gray: 0, fill: 0.55 },
  strip: { width: 0.2, gray: 0, dash: [0.8, 0.5], fill: 0.92 },
  measure: { width: 0.15, gray: 0.35, dash: [2, 0.6, 0.4, 0.6] },
  wall: { width: 0.18, gray: 0.45, fill: 1 },
  top: { width: 0.25, gray: 0, fill: 0.86 },
  side: { width: 0.25, gray: 0, fill: 0.95 },
  'bed-0': { width: 0.02, gray: 1, fill: 1 },
  'bed-1': { width: 0.02, gray: 0.88, fill: 0.88 },
  'bed-2': { width: 0.02, gray: 0.76, fill: 0.76 },
  'bed-3': { width: 0.02, gray: 0.64, fill: 0.64 },
  'bed-4': { width: 0.02, gray: 0.52, fill: 0.52 },
};
