import type { SplineGrid } from './splineGrid';

/** Value, mm, and second derivatives, 1/mm, of a spline surface at one place. */
export interface SurfacePoint {
  value: number;
  uu: number;
  vv: number;
  uv: number;
}

/** A surface of given coefficients; outside the rectangle the edge cells' parabolas go on. */
export function surfaceOf(grid: SplineGrid, coefficients: Float64Array): (u: number, v: number) => SurfacePoint {
  const { columns, rows, u0, v0, cellWidth, cellHeight, across } = grid;
  return (u, v) => {
    const [i, x] = cellOf((u - u0) / cellWidth, columns);
    const [j, y] = cellOf((v - v0) / cellHeight, rows);
    const [bx, dx] = pieces(x);
    const [by, dy] = pieces(y);
    const point = { value: 0, uu: 0, vv: 0, uv: 0 };
    for (let b = 0; b < 3; b++) {
      for (let a = 0; a < 3; a++) {
        const c = coefficients[i + a + (j + b) * across] as number;
        point.value += c * (bx[a] as number) * (by[b] as number);
        point.uu += (c * (CURVATURE[a] as number) * (by[b] as number)) / cellWidth ** 2;
        point.vv += (c * (CURVATURE[b] as number) * (bx[a] as number)) / cellHeight ** 2;
        point.uv += (c * (dx[a] as number) * (dy[b] as number)) / (cellWidth * cellHeight);
      }
    }
    return point;
  };
}

const CURVATURE = [1, -2, 1];

function cellOf(x: number, cells: number): [number, number] {
  const cell = Math.min(Math.max(Math.floor(x), 0), cells - 1);
  return [cell, x - cell];
}

/** Values and slopes, by the cell's width, of the three splines over a cell. */
function pieces(x: number): [number[], number[]] {
  return [
    [(1 - x) ** 2 / 2, 0.5 + x - x * x, (x * x) / 2],
    [x - 1, 1 - 2 * x, x],
  ];
}
