export type { AdhesiveLayout } from './adhesive';
export type { Joint, JointFiller } from './joint';
export { type MaterialInput, type MaterialLine, type Materials, materialsFor } from './materials';
export { type Packs, packsFor } from './packs';
export { fillDepth, jointSection, jointVolume } from './section';
export { CARTRIDGES, ML_PER_FLUID_OUNCE } from './volume';
