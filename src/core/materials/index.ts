export type { AdhesiveLayout } from './adhesive';
export type { FittedForMaterials } from './fittedForMaterials';
export type { Joint, JointFiller } from './joint';
export type { MaterialInput, MaterialLine, Materials } from './materialLine';
export { materialsFor } from './materials';
export { movement, widthForMovement } from './movement';
export { type Packs, packsFor } from './packs';
export { fillDepth, jointSection, jointVolume } from './section';
export { CARTRIDGES, ML_PER_FLUID_OUNCE } from './volume';
