import type { Group, PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import { cellsFor } from './cells';

export interface Drawing {
  gl: WebGLRenderer;
  scene: Scene;
  camera: PerspectiveCamera;
  width: number;
  height: number;
  groups: readonly (Group | null)[];
  /** share of the width at which the first view ends and the second begins; null shows each in a part of its own */
  wipe: number | null;
}

/** The part of the picture that one view fills: its shape decides how far away the viewer stands. */
export function viewSize(
  count: number,
  wipe: number | null,
  width: number,
  height: number,
): { width: number; height: number } {
  return wipe !== null && count === 2 ? { width, height } : cellsFor(count, width, height)[0]!;
}

/** Draws each group from the same place: in parts of the picture, or two in one picture, divided by an upright line. */
export function drawViews({ gl, scene, camera, width, height, groups, wipe }: Drawing): void {
  const count = groups.length;
  const whole = { x: 0, y: 0, width, height };
  const wiped = wipe !== null && count === 2;
  const cells = wiped
    ? [
        { ...whole, width: width * wipe },
        { ...whole, x: width * wipe, width: width * (1 - wipe) },
      ]
    : cellsFor(count, width, height);
  gl.setScissorTest(true);
  cells.forEach((cell, i) => {
    if (cell.width < 1) return;
    groups.forEach((group, k) => {
      if (group) group.visible = k === i;
    });
    const view = wiped ? whole : cell;
    camera.aspect = view.width / view.height;
    camera.updateProjectionMatrix();
    gl.setViewport(view.x, view.y, view.width, view.height);
    gl.setScissor(cell.x, cell.y, cell.width, cell.height);
    gl.render(scene, camera);
  });
  gl.setScissorTest(false);
  gl.setViewport(0, 0, width, height);
}
