export { browserKeep } from './database';
export type { Keep, KeptJob, KeptPhoto, KeptScan } from './keep';
export { memoryKeep } from './memory';
export { type OpenedKeep, openKeep } from './open-keep';
export { StorageFault, type StorageTrouble } from './storage-fault';
