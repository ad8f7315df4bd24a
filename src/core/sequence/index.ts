export { type JointBatch, jointBatches } from './batches';
export { type Booking, bookTasks } from './calendar';
export { cautions } from './cautions';
export { type CriticalPath, criticalPath, type TaskTimes } from './criticalPath';
export { cureTime } from './cure';
export { type SequenceStep, sequenceFor } from './sequence';
export type { Task, TaskKind } from './task';
export type { Worked } from './tasks';
