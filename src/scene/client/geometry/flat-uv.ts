import type { Panel, PanelName, Point } from '../../../core';
import { onWallCoordinates } from './wall-coordinates';

/** u' = a·u + b·v + c, v' = d·u + e·v + f */
export type Affine = readonly [number, number, number, number, number, number];

/**
 * Wall coordinates to coordinates of the flat sheet, as an affine map fitted to the outline by least squares: what bends
 * a panel to its wall moves no point of the sheet by as much as a pattern shows.
 */
function flatAffine({ outline, flat }: Pick<Panel, 'outline' | 'flat'>): Affine {
  const mean = (points: readonly Point[], axis: 0 | 1) =>
    points.reduce((sum, point) => sum + point[axis], 0) / points.length;
  const [mu, mv] = [mean(outline, 0), mean(outline, 1)];
  const [mx, my] = [mean(flat.outline, 0), mean(flat.outline, 1)];
  let [uu, uv, vv, ux, vx, uy, vy] = [0, 0, 0, 0, 0, 0, 0];
  outline.forEach(([u, v], i) => {
    const [x, y] = flat.outline[i]!;
    const [du, dv, dx, dy] = [u - mu, v - mv, x - mx, y - my];
    uu += du * du;
    uv += du * dv;
    vv += dv * dv;
    ux += du * dx;
    vx += dv * dx;
    uy += du * dy;
    vy += dv * dy;
  });
  const determinant = uu * vv - uv * uv;
  const solve = (p: number, q: number): [number, number] => [
    (p * vv - q * uv) / determinant,
    (q * uu - p * uv) / determinant,
  ];
  const [a, b] = solve(ux, vx);
  const [d, e] = solve(uy, vy);
  return [a, b, mx - a * mu - b * mv, d, e, my - d * mu - e * mv];
}

/** The stretch of the flat sheet that is drawn of a panel: its outline's bounds, mm from the sheet's lower left corner. */
export interface FlatArea {
  left: number;
  bottom: number;
  width: number;
  height: number;
  sheet: { width: number; height: number };
}

export function flatArea({ flat }: Pick<Panel, 'flat'>): FlatArea {
  const { sheet, outline } = flat;
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return {
    left: left - sheet.left,
    bottom: bottom - sheet.bottom,
    width: Math.max(...xs) - left,
    height: Math.max(...ys) - bottom,
    sheet: { width: sheet.right - sheet.left, height: sheet.top - sheet.bottom },
  };
}

/** Texture coordinates, 0 to 1 over the panel's flat area, of points of its solid in the alcove. */
export function flatUv(
  name: PanelName,
  panel: Pick<Panel, 'outline' | 'flat'>,
  positions: readonly number[],
): Float32Array {
  const [a, b, c, d, e, f] = flatAffine(panel);
  const { left, bottom, width, height } = flatArea(panel);
  const { sheet } = panel.flat;
  const uv = new Float32Array((positions.length / 3) * 2);
  for (let i = 0; i < positions.length / 3; i++) {
    const [u, v] = onWallCoordinates(name, [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!]);
    uv[2 * i] = (a * u + b * v + c - sheet.left - left) / width;
    uv[2 * i + 1] = (d * u + e * v + f - sheet.bottom - bottom) / height;
  }
  return uv;
}
