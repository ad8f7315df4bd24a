import { expose } from 'comlink';
import loadHighs from 'highs';
import wasm from 'highs/runtime?url';
import { planStock } from '../core';
import { highsSolver } from '../milp';

const solve = highsSolver(() => loadHighs({ locateFile: () => wasm }));

const planner = {
  plan: (pieces: Parameters<typeof planStock>[0]['pieces'], job: Parameters<typeof planStock>[1]) =>
    planStock({ pieces }, job, solve),
};
export type StockWorker = typeof planner;

expose(planner);
