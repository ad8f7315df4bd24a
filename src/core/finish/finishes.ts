import type { Finish } from '../job-file';

/** A finish under a name of its own. */
export interface NamedFinish {
  name: string;
  finish: Finish;
}

/** Finishes to start from, all invented. */
export const finishes: readonly NamedFinish[] = [
  named('Chalk', {
    look: 'plain',
    colour: '#efeeea',
    second: '#dddbd5',
    size: 300,
    seed: 1,
    gloss: 0.5,
    trim: '#f4f3ef',
  }),
  named('Sea fog', {
    look: 'plain',
    colour: '#c3cbcb',
    second: '#a9b2b2',
    size: 300,
    seed: 1,
    gloss: 0.45,
    trim: '#f4f3ef',
  }),
  named('Saltpan', {
    look: 'stone',
    colour: '#e6e4de',
    second: '#a8a59c',
    size: 520,
    seed: 12,
    gloss: 0.55,
    trim: '#f4f3ef',
  }),
  named('Driftbank', {
    look: 'stone',
    colour: '#d9cbb6',
    second: '#a98d6c',
    size: 460,
    seed: 31,
    gloss: 0.5,
    trim: '#e9e1d3',
  }),
  named('Night heath', {
    look: 'stone',
    colour: '#43494a',
    second: '#b9b6ab',
    size: 640,
    seed: 7,
    gloss: 0.6,
    trim: '#2f3435',
  }),
  named('Reedbank', {
    look: 'ribbed',
    colour: '#d9d5c9',
    second: '#b5ae9d',
    size: 22,
    seed: 4,
    gloss: 0.25,
    trim: '#d9d5c9',
  }),
  named('Mill race', {
    look: 'ribbed',
    colour: '#8fa3a0',
    second: '#6b7f7c',
    size: 40,
    seed: 9,
    gloss: 0.35,
    trim: '#f4f3ef',
  }),
  named('Flagfield', {
    look: 'large-format',
    colour: '#cfd3d0',
    second: '#f1f1ee',
    size: 610,
    seed: 8,
    gloss: 0.4,
    trim: '#6b706f',
  }),
  named('Kiln court', {
    look: 'large-format',
    colour: '#b98f73',
    second: '#e6ddd2',
    size: 400,
    seed: 2,
    gloss: 0.3,
    trim: '#e6ddd2',
  }),
];

function named(name: string, finish: Finish): NamedFinish {
  return { name, finish };
}

/** Two finishes with the same key look the same but for the colour of their trim. */
const keyOf = ({ look, colour, second, size, seed, gloss }: Finish): string =>
  JSON.stringify([look, colour, second, size, seed, gloss]);

/** What a finish is called, whatever the colour of its trim; null where it is one's own. */
export const nameOfFinish = (finish: Finish): string | null =>
  finishes.find((each) => keyOf(each.finish) === keyOf(finish))?.name ?? null;
