import { describe, expect, it } from 'vitest';
import type { MeshData, Vec3 } from '../../../src/scene/geometry';
import { drawnAlcove } from '../../../src/scene/geometry';
import { enclosedVolume, gridMesh } from '../../../src/scene/geometry/mesh-data';
import { panelSolid } from '../../../src/scene/geometry/panel-solid';
import { rimSolid } from '../../../src/scene/geometry/rim-solid';
import { alcoveShape } from '../../../src/scene/geometry/shape';
import { wallMesh } from '../../../src/scene/geometry/wall-mesh';
import { solvedDemo } from './solvedDemo';

const stay = (point: Vec3): Vec3 => point;
const walls = ['back', 'left', 'right'] as const;

/** Normal of each triangle, as long as twice its area. */
function normals({ positions, indices }: MeshData): Vec3[] {
  const at = (i: number): Vec3 => [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!];
  const found: Vec3[] = [];
  for (let i = 0; i < indices.length; i += 3) {
    const [a, b, c] = [at(indices[i]!), at(indices[i + 1]!), at(indices[i + 2]!)];
    const [u, v] = [b, c].map((p) => [p[0] - a[0], p[1] - a[1], p[2] - a[2]] as const) as [Vec3, Vec3];
    found.push([u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]]);
  }
  return found;
}

/** Edges that do not run once each way: none in a closed surface. */
function openEdges({ positions, indices }: MeshData): number {
  const name = (i: number) => [0, 1, 2].map((axis) => positions[3 * i + axis]!.toFixed(3)).join(' ');
  const count = new Map<string, number>();
  for (let i = 0; i < indices.length; i += 3) {
    for (let k = 0; k < 3; k++) {
      const [from, to] = [name(indices[i + k]!), name(indices[i + ((k + 1) % 3)]!)];
      if (from === to) continue;
      const [key, step] = from < to ? [`${from}|${to}`, 1] : [`${to}|${from}`, -1];
      count.set(key, (count.get(key) ?? 0) + step);
    }
  }
  return [...count.values()].filter((balance) => balance !== 0).length;
}

describe('wallMesh', () => {
  const shape = alcoveShape(solvedDemo().result);
  it.each([
    ['back', [0, 0, 1]],
    ['left', [1, 0, 0]],
    ['right', [-1, 0, 0]],
  ] as const)('faces the room on the %s wall', (wall, room) => {
    for (const normal of normals(wallMesh(shape, wall, stay))) {
      expect(normal[0] * room[0] + normal[1] * room[1] + normal[2] * room[2]).toBeGreaterThan(0);
    }
  });
});

describe('panelSolid', () => {
  const { job, result } = solvedDemo();
  const shape = alcoveShape(result);
  it.each(walls)('encloses area times thickness on the %s wall, holes taken out', (wall) => {
    const panel = result.panels[wall];
    const { mesh } = panelSolid(shape, panel, job.fit.bed, stay);
    const corners = panel.outline;
    const area = corners.reduce((sum, [x, y], i) => {
      const [x2, y2] = corners[(i + 1) % corners.length]!;
      return sum + (x * y2 - x2 * y) / 2;
    }, 0);
    const holes = panel.holes.reduce((sum, hole) => sum + (Math.PI / 4) * hole.diameter ** 2, 0);
    expect(enclosedVolume(mesh) / ((area - holes) * panel.thickness)).toBeCloseTo(1, 2);
    expect(openEdges(mesh)).toBe(0);
  });

  it('leaves out what a short sheet does not reach', () => {
    const short = solvedDemo((whole) => ({
      ...whole,
      sheets: { ...whole.sheets, back: { ...whole.sheets.back, height: 1200 } },
    }));
    const panel = short.result.panels.back;
    expect(panel.gaps.length).toBeGreaterThan(0);
    const { faceOutline } = panelSolid(alcoveShape(short.result), panel, job.fit.bed, stay);
    const heights = faceOutline.map(([, y]) => y);
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(1201);
  });
});

describe('pieceSolid', () => {
  const { job, result } = solvedDemo((whole) => ({ ...whole, trim: { ...whole.trim, lip: 4, overhang: 3 } }));
  const drawn = drawnAlcove(result, job, 1, 0);
  const pieces = Object.values(result.pieces).flat();
  const area = (loop: readonly (readonly [number, number])[]) =>
    Math.abs(
      loop.reduce((sum, [x, y], i) => {
        const [x2, y2] = loop[(i + 1) % loop.length]!;
        return sum + (x * y2 - x2 * y) / 2;
      }, 0),
    );

  it('is there for every piece besides the panels', () => {
    expect(new Set(pieces.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(6);
    expect(drawn.pieces.map(({ id }) => id).sort()).toEqual(pieces.map(({ id }) => id).sort());
  });

  it.each(pieces.map((piece) => [piece.id, piece] as const))(
    'is closed and holds what the bodies of %s hold',
    (id, piece) => {
      const { mesh } = drawn.pieces.find((each) => each.id === id)!.solid;
      const flat = piece.bodies.reduce((sum, { back, face, from, to }) => {
        const middle = back.map(([x, y], i) => [(x + face[i]![0]) / 2, (y + face[i]![1]) / 2] as const);
        return sum + ((to - from) * (area(back) + 4 * area(middle) + area(face))) / 6;
      }, 0);
      expect(enclosedVolume(mesh) / flat).toBeCloseTo(1, 2);
      expect(openEdges(mesh)).toBe(0);
    },
  );

  it('keeps shelves in the corner of panels that are drawn off their walls', () => {
    const off = drawnAlcove(result, job, 1, 100);
    const [near, far] = [drawn, off].map(({ pieces: all }) => all.find(({ kind }) => kind === 'shelf')!.at);
    expect(far!.map((value, axis) => value - near![axis]!)).toEqual(
      [100, 0, 100].map((value) => expect.closeTo(value, 6)),
    );
  });
});

describe('rimSolid', () => {
  it('has the measured rim at its ledge and the apron at the width of the tub', () => {
    const { job, result } = solvedDemo();
    const shape = alcoveShape(result);
    const { edges } = rimSolid(shape, job.rim, stay);
    for (const [x, y, z] of edges[0]!) expect(y).toBeCloseTo(shape.rim(x, z), 6);
    expect(Math.max(...edges[1]!.map(([, , z]) => z))).toBeCloseTo(job.rim.width, 6);
  });

  it('rolls over where the contour says and stands back down the apron, to the floor', () => {
    const { job, result } = solvedDemo();
    const shape = alcoveShape(result);
    const { mesh } = rimSolid(shape, job.rim, stay);
    const points = Array.from({ length: mesh.positions.length / 3 }, (_, i) => mesh.positions.slice(3 * i, 3 * i + 3));
    const nearest = (z: number, drop: number) =>
      Math.min(
        ...points.map(([, y, at]) => Math.hypot(y! - (shape.rim(points[0]![0]!, job.rim.width) - drop), at! - z)),
      );
    const [, roll] = job.rim.profile.at(-1)!;
    expect(nearest(job.rim.width, -roll)).toBeLessThan(8);
    for (const [out, rise] of job.rim.apron) expect(nearest(job.rim.width + out, -rise)).toBeLessThan(8);
    const start = job.rim.width - job.rim.profile.at(-1)![0];
    for (const [x, y, z] of points) if (z! > start + 1) expect(y!).toBeLessThan(shape.rim(x!, start));
    expect(Math.min(...points.map(([, y]) => y!))).toBeCloseTo(shape.nominal.rim - job.rim.apronHeight, 6);
  });
});

describe('gridMesh', () => {
  it('gives the volume of a box from its six sides', () => {
    const side = (a: Vec3, b: Vec3, c: Vec3, d: Vec3) =>
      gridMesh([
        [a, b],
        [d, c],
      ]);
    const [o, x, y, z] = [
      [0, 0, 0],
      [2, 0, 0],
      [0, 3, 0],
      [0, 0, 4],
    ] as Vec3[];
    const [xy, xz, yz, xyz] = [
      [2, 3, 0],
      [2, 0, 4],
      [0, 3, 4],
      [2, 3, 4],
    ] as Vec3[];
    const sides = [
      side(z!, xz!, xyz!, yz!),
      side(x!, o!, y!, xy!),
      side(xz!, x!, xy!, xyz!),
      side(o!, z!, yz!, y!),
      side(yz!, xyz!, xy!, y!),
      side(o!, x!, xz!, z!),
    ];
    expect(sides.reduce((sum, mesh) => sum + enclosedVolume(mesh), 0)).toBeCloseTo(24, 9);
  });
});
