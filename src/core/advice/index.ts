import type { Job, WallName } from '../job-file';
import type { Panel } from '../panel';
import { accessAdvice } from './accessAdvice';
import type { Advice } from './advice';
import { studAdvice } from './studAdvice';

export type { Advice } from './advice';

/** All that may be thought of before holes are cut. */
export const adviceFor = (job: Job, panels: Record<WallName, Panel>): Advice[] => [
  ...studAdvice(job, panels),
  ...accessAdvice(job, panels),
];
