export { type Tag, tagsOf } from './tag';
export { TagLayer } from './TagLayer';
export { TagProjector } from './TagProjector';
