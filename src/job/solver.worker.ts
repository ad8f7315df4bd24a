import { expose } from 'comlink';
import { solve } from '../core';

const solver = { solve };
export type SolverWorker = typeof solver;

expose(solver);
