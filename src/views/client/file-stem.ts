import { jobFileName } from '../../job';

/** What the names of a job's files begin with. */
export const fileStem = (name: string): string => jobFileName({ name }).replace(/\.json$/, '');
