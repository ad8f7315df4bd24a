import type { WallName } from '../../job-file';

/** A rectangle on a sheet, mm from the lower left corner as seen from the sheet's face. */
export interface Rectangle {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface PlacedPiece extends Rectangle {
  /** 'panels.back', 'legs.left', 'fillers.top' */
  piece: string;
  /** turned by a quarter to the left */
  turned: boolean;
  /** a hidden strip may be made up of several lengths: which of how many */
  part: { number: number; of: number };
}

export interface SheetInUse {
  /** which of the job's sheets it is like */
  like: WallName;
  width: number;
  height: number;
  placed: PlacedPiece[];
  /** what is left over and worth keeping, largest first */
  offcuts: Rectangle[];
}

/** What is cut from which sheet. */
export interface SheetLayout {
  sheets: SheetInUse[];
  /** of all sheets, mm² */
  bought: number;
  /** of it what the panels take, and the rough blanks of the pieces placed, mm² */
  used: number;
  /** pieces that fit on no sheet */
  unplaced: string[];
}
