/** What of the finished alcove is shown. */
export interface Layers {
  panels: boolean;
  trim: boolean;
  shelves: boolean;
  fixtures: boolean;
  sealant: boolean;
}

export const bareLayers: Layers = { panels: false, trim: false, shelves: false, fixtures: false, sealant: false };
