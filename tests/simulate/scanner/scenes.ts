import type { TrueAlcove } from '../trueAlcove';
import type { Scene, Solid } from './scene';

const FLOOR = -1250;
const CEILING = 1150;

/** An alcove with a tub, empty. */
export const emptyScene = (alcove: TrueAlcove): Scene => ({
  alcove,
  solids: [],
  floor: FLOOR,
  ceiling: CEILING,
  tub: { ledge: 75, apron: 760, depth: 360 },
});

/** Things as they stand about in a bathroom: taps, bottles on the rim, towels on a wall, a shower curtain, a person. */
export function clutteredScene(alcove: TrueAlcove): Scene {
  const rim = alcove.rim.c;
  const [left, right] = [alcove.left.c, alcove.right.c];
  const solids: Solid[] = [
    // valve, spout and shower head on the right wall
    { kind: 'cylinder', x: right - 30, z: 380, radius: 45, from: rim + 320, to: rim + 410 },
    { kind: 'box', from: [right - 150, rim + 110, 360], to: [right - 2, rim + 150, 400] },
    { kind: 'ball', centre: [right - 180, 780, 380], radius: 70 },
    { kind: 'box', from: [right - 190, 800, 375], to: [right - 1, 815, 385] },
    // bottles on the back ledge and a soap dish against the wall
    ...[-520, -430, -350, 240, 330].map(
      (x, i): Solid => ({ kind: 'cylinder', x, z: 42, radius: 30, from: rim, to: rim + 170 + 20 * i }),
    ),
    { kind: 'box', from: [60, -260, 2], to: [190, -235, 110] },
    // towels: one hung flat on the back wall, one folded over a rod at the left
    { kind: 'box', from: [-480, -120, 12], to: [-60, 520, 24] },
    { kind: 'box', from: [left + 45, -80, 220], to: [left + 75, 480, 640] },
    // a curtain gathered at the left, and a person standing in front
    { kind: 'cylinder', x: left + 110, z: 700, radius: 60, from: rim - 100, to: 900 },
    { kind: 'cylinder', x: 380, z: 800, radius: 150, from: FLOOR, to: 250 },
    { kind: 'ball', centre: [380, 360, 800], radius: 110 },
    { kind: 'box', from: [120, -20, 520], to: [280, 40, 760] },
  ];
  return { ...emptyScene(alcove), solids };
}
