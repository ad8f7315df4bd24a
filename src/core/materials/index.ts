export type { AdhesiveLayout } from './adhesive';
export type { FittedForMaterials } from './fittedForMaterials';
export type { Joint, JointFiller, JointMovement } from './joint';
export type { MaterialInput, MaterialLine, Materials } from './materialLine';
export { materialsFor } from './materials';
export {
  GYPSUM_EXPANSION,
  GYPSUM_SWELLING,
  moistureMovement,
  movement,
  movementBeside,
  widthForMovement,
} from './movement';
export { moving } from './moving';
export { type Packs, packsFor } from './packs';
export { fillDepth, jointSection, jointVolume } from './section';
export { barsFor } from './stockLines';
export { trimAsPlanned } from './trimAsPlanned';
export { centred, clearOf } from './uprightRuns';
export { CARTRIDGES, ML_PER_FLUID_OUNCE } from './volume';
