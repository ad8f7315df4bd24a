import type { Target } from '../target';
import { jobFileTargets } from './jobFiles';
import { keptJobTargets } from './keptJobs';
import { linkTargets } from './links';
import { scanTargets } from './scans';
import { templateTargets } from './templates';
import { typedTargets } from './typed';
import { wordTargets } from './words';

export const targets: readonly Target[] = [
  ...jobFileTargets,
  ...linkTargets,
  ...templateTargets,
  ...keptJobTargets,
  ...scanTargets,
  ...typedTargets,
  ...wordTargets,
];
