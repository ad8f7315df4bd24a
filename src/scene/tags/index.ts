export type { TagBox } from './arrange';
export { fitTags } from './fitTags';
export { TagLayer } from './TagLayer';
export { TagProjector } from './TagProjector';
export { type Tag, tagsOf } from './tag';
