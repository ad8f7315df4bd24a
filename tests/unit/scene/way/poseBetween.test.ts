import { expect, it } from 'vitest';
import { drawnAlcove } from '../../../../src/scene/geometry';
import { poseBetween } from '../../../../src/scene/way';
import { movedPanel } from '../../../../src/scene/way/moved-panel';
import { solvedDemo } from '../solvedDemo';

const { job, result } = solvedDemo();
const { poses } = result.gettingIn.panels.back;

it('goes evenly from pose to pose and stays at the ends', () => {
  const [first, second] = poses as [(typeof poses)[0], (typeof poses)[0]];
  expect(poseBetween(poses, 0)).toMatchObject({ angle: first.angle, shift: first.shift });
  expect(poseBetween(poses, 0.25).shift[2]).toBeCloseTo(0.75 * first.shift[2] + 0.25 * second.shift[2], 9);
  expect(poseBetween(poses, -3)).toEqual(poseBetween(poses, 0));
  expect(poseBetween(poses, 1e6)).toEqual(poseBetween(poses, poses.length - 1));
});

it('ends with the panel where it is drawn on its wall', () => {
  const panel = drawnAlcove(result, job, 1, 0).panels.find(({ name }) => name === 'back')!;
  const home = movedPanel(panel, poseBetween(poses, poses.length - 1));
  home.mesh.positions.forEach((value, i) => {
    expect(value).toBeCloseTo(panel.solid.mesh.positions[i]!, 6);
  });
  const out = movedPanel(panel, poseBetween(poses, 0));
  const nearest = Math.min(...out.faceOutline.map(([, , z]) => z));
  expect(nearest).toBeGreaterThan(result.front.left.value[0]! + 200);
});
