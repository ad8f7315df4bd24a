/** What of the finished alcove is shown. */
export interface Layers {
  panels: boolean;
  trim: boolean;
  shelves: boolean;
  fixtures: boolean;
  sealant: boolean;
}

export const everyLayer: Layers = { panels: true, trim: true, shelves: true, fixtures: true, sealant: true };
export const bareLayers: Layers = { panels: false, trim: false, shelves: false, fixtures: false, sealant: false };
