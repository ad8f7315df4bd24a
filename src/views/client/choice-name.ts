import type { Job } from '../../core';
import { OWN_WAY } from './useWays';

type Named = Pick<Job, 'choices'>;

/** Whether another way is called so already, the job's own among them. */
export const nameTaken = ({ choices }: Named, name: string): boolean =>
  name === OWN_WAY || choices.some(({ id }) => id === name);

/** What a new choice is called where nobody names it. */
export const freeName = (job: Named): string =>
  ['Another way', 'A third way', 'A fourth way', 'One more way'].find((name) => !nameTaken(job, name))!;
