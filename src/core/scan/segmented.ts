import type { RigidFrame } from './rigidFrame';
import type { Vec } from './vec';

export interface SegmentOptions {
  /** the same seed finds the same */
  seed?: number;
  /** which way is up in the cloud; y unless given */
  up?: Vec;
  /** `up` was measured by the scanner and stands; otherwise it is a guess that floor and walls may turn by 20° */
  upKnown?: boolean;
  /** height of the job's level line above the floor, and of the rim, mm: they place the level line in the scan */
  levelAboveFloor?: number;
  rimAboveFloor?: number;
  /** @param share of the work done, 0 to 1 */
  onProgress?(share: number): void;
  /** asked now and then; true ends the work */
  cancelled?(): boolean;
}

/** What of the alcove a scan shows, mm. */
export interface SegmentQuality {
  /** points of each label, by its number */
  counts: number[];
  /** spread of the points about each surface, 1 sigma, robust; null for what was not found */
  noise: { back: number | null; left: number | null; right: number | null; rim: number | null };
  /** between the side walls at the level line, null where one was not found */
  width: number | null;
  /** angle between the up of the file and that of floor and walls, degrees */
  upTurned: number;
}

/** A cloud with each point's place in the alcove. */
export interface Segmented {
  /** one of `LABEL` for each point */
  labels: Uint8Array;
  /** from the cloud's positions into the job's frame, as near as the scan alone tells */
  frame: RigidFrame;
  quality: SegmentQuality;
}

/** Why no alcove was found, in a sentence for the person. */
export interface NotSegmented {
  reason: string;
}
