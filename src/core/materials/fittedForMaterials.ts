import type { WallName } from '../job-file';
import type { SheetLayout } from '../layout';
import type { Panel } from '../panel';
import type { Piece } from '../piece';
import type { ShelfPiece } from '../shelf';

/** All that is fitted and cut, from which materials are counted. */
export interface FittedForMaterials {
  panels: Record<WallName, Panel>;
  trim: readonly Piece[];
  legs: readonly Piece[];
  shelves: readonly ShelfPiece[];
  layout: SheetLayout;
}
