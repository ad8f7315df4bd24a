import { z } from 'zod';
import {
  celsius,
  count,
  millilitres,
  millimetres,
  percent,
  perMillionHumidity,
  perMillionKelvin,
  share,
} from './field';

/** A paste that is bought in cartridges and tooled into a joint. */
const jointPaste = z.strictObject({
  /** contents of one cartridge, mL */
  cartridge: millilitres(20, 5000).default(298.7),
  /** leg of the fillet that covers the joint, mm */
  fillet: millimetres(0, 25).default(6.35),
  /** share of what is gunned that tooling takes off again */
  toolingLoss: share().default(0.15),
});

/** How materials are counted. Defaults are common practice, no source, unless core/materials names one. Lengths in mm. */
export const supplies = z.strictObject({
  adhesive: z
    .strictObject({
      layout: z.enum(['dots', 'beads']).default('dots'),
      /** between dots, or between upright beads */
      spacing: millimetres(30, 600).default(101.6),
      /** kept clear along edges and around holes */
      edgeClear: millimetres(0, 200).default(38.1),
      /** width of a dot or bead once pressed flat */
      pressedWidth: millimetres(5, 200).default(38.1),
      /** diameter of the round bead along trim and legs */
      trimBead: millimetres(0, 30).default(6),
      /** contents of one cartridge, mL */
      cartridge: millilitres(20, 5000).default(828.1),
      /** share left in cartridges and on the knife */
      waste: share().default(0.1),
    })
    .prefault({}),
  sealant: jointPaste.prefault({}),
  caulk: jointPaste.prefault({}),
  /** a joint wider than this at its face is no joint for sealant */
  widestJoint: millimetres(3, 50).default(12.7),
  flashingTape: z
    .strictObject({ overlap: millimetres(0, 500).default(50.8), roll: millimetres(500, 100_000).default(10_000) })
    .prefault({}),
  /** double-faced strips that hold a panel while its adhesive cures */
  strips: z
    .strictObject({
      spacing: millimetres(100, 2000).default(762),
      edgeClear: millimetres(0, 500).default(50.8),
      width: millimetres(5, 150).default(25.4),
      roll: millimetres(500, 100_000).default(10_000),
    })
    .prefault({}),
  /** closed-cell rod behind joints too wide to fill to the wall */
  backerRod: z.strictObject({ roll: millimetres(500, 200_000).default(6000) }).prefault({}),
  /** how far a joint has to give: core/materials/movement.ts names the sources */
  movement: z
    .strictObject({
      /** coefficient of linear thermal expansion of the sheet, 1e-6/K; its maker's sheet says it */
      expansion: perMillionKelvin(0, 200).default(30),
      /** the most that it may be, where only a range is known */
      expansionMost: perMillionKelvin(0, 200).optional(),
      /** growth of the sheet with the relative humidity around it, 1e-6 per % RH, and the most that may be */
      swelling: perMillionHumidity(0, 200).default(0),
      swellingMost: perMillionHumidity(0, 200).optional(),
      /** change of relative humidity around sheet and wall, % RH */
      humidity: percent().default(20),
      /** change of temperature of the finished wall, K */
      swing: celsius(0, 80).default(15),
      /** share of its width that the sealant can move: 0.25 for class 25 */
      capability: share(0.05).default(0.25),
    })
    .prefault({}),
  /** for each shelf, for each bracket, and in a box */
  brackets: z
    .strictObject({ perShelf: count(20).default(2), screws: count(20).default(2), box: count(1000).default(50) })
    .prefault({}),
  painterTape: z.strictObject({ roll: millimetres(500, 200_000).default(50_000) }).prefault({}),
  /** cleaning alcohol, mL per m² wiped, each face once */
  alcohol: z
    .strictObject({ perSquareMetre: millilitres(0, 1000).default(50), bottle: millilitres(50, 5000).default(473) })
    .prefault({}),
});
