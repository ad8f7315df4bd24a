import type { WallName } from '../../job-file';
import type { Region } from './region';
import type { PlacedPiece } from './sheetLayout';

/** A sheet with its panels placed and the regions that are left. */
export interface OpenSheet {
  like: WallName;
  width: number;
  height: number;
  placed: PlacedPiece[];
  free: Region[];
}
