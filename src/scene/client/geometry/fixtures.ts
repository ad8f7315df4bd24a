import {
  type BufferGeometry,
  CapsuleGeometry,
  CylinderGeometry,
  Matrix4,
  Quaternion,
  SphereGeometry,
  TorusGeometry,
  Vector3,
} from 'three';
import { mergeGeometries } from 'three/examples/jsm/utils/BufferGeometryUtils.js';
import type { Fixture, Job, Result } from '../../../core';
import { type AlcoveShape, intoRoom, onWall, type Vec3 } from '../../geometry';
import { grabBars } from './grab-bars';

const ROUND = 24;
const UP = new Vector3(0, 1, 0);

/** A round bar from one point to another, mm. */
function bar(from: Vector3, to: Vector3, radius: number, endRadius = radius): BufferGeometry {
  const along = to.clone().sub(from);
  const turn = new Quaternion().setFromUnitVectors(UP, along.clone().normalize());
  const middle = from.clone().add(to).multiplyScalar(0.5);
  return new CylinderGeometry(endRadius, radius, along.length(), ROUND).applyMatrix4(
    new Matrix4().compose(middle, turn, new Vector3(1, 1, 1)),
  );
}

const ball = (at: Vector3, radius: number): BufferGeometry =>
  new SphereGeometry(radius, ROUND, 12).translate(at.x, at.y, at.z);

/** A rounded rod about a middle, along a direction. */
function rod(middle: Vector3, direction: Vector3, length: number, radius: number): BufferGeometry {
  const turn = new Quaternion().setFromUnitVectors(UP, direction.clone().normalize());
  return new CapsuleGeometry(radius, length, 5, ROUND).applyMatrix4(
    new Matrix4().compose(middle, turn, new Vector3(1, 1, 1)),
  );
}

/** A disc on the wall with a rounded rim. */
function plate(at: Vector3, out: Vector3, radius: number, thick: number): BufferGeometry[] {
  const edge = thick / 2;
  const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 0, 1), out);
  const middle = at.clone().addScaledVector(out, edge);
  const ring = new TorusGeometry(radius - edge, edge, 6, ROUND).applyMatrix4(
    new Matrix4().compose(middle, turn, new Vector3(1, 1, 1)),
  );
  return [bar(at, at.clone().addScaledVector(out, thick), radius - edge), ring];
}

const DOWN = new Vector3(0, -1, 0);

const solids: Record<
  Exclude<Fixture['kind'], 'grab-bar'>,
  (at: Vector3, out: Vector3, hole: number) => BufferGeometry[]
> = {
  valve: (at, out, hole) => {
    const hub = at.clone().addScaledVector(out, 46);
    const end = hub.clone().addScaledVector(DOWN, 88).addScaledVector(out, 14);
    return [
      ...plate(at, out, Math.max(78, hole / 2 + 18), 9),
      bar(at, at.clone().addScaledVector(out, 32), 27, 25),
      bar(at, hub, 21, 20),
      ball(hub, 20),
      rod(hub.clone().lerp(end, 0.5), end.clone().sub(hub), 84, 7.5),
    ];
  },
  spout: (at, out, hole) => {
    const tip = at.clone().addScaledVector(out, 132);
    return [
      ...plate(at, out, Math.max(38, hole / 2 + 12), 8),
      bar(at, tip, 26, 23),
      ball(tip, 23),
      bar(tip, tip.clone().addScaledVector(DOWN, 30), 20, 17),
    ];
  },
  'shower-head': (at, out, hole) => {
    const bend = at
      .clone()
      .addScaledVector(out, 110)
      .add(new Vector3(0, 22, 0));
    const neck = bend.clone().addScaledVector(out, 74).addScaledVector(DOWN, 52);
    const tilt = out.clone().multiplyScalar(0.45).add(DOWN).normalize();
    const crown = neck.clone().addScaledVector(tilt, 24);
    return [
      ...plate(at, out, Math.max(32, hole / 2 + 12), 7),
      bar(at, bend, 10.5),
      ball(bend, 10.5),
      bar(bend, neck, 10.5),
      ball(neck, 15),
      bar(neck, crown, 17, 74),
      bar(crown, crown.clone().addScaledVector(tilt, 14), 76, 74),
    ];
  },
  'hand-shower': (at, out, hole) => {
    const elbow = at.clone().addScaledVector(out, 46);
    const grip = elbow
      .clone()
      .add(new Vector3(0, 62, 0))
      .addScaledVector(out, 16);
    const tilt = new Vector3(0, 1, 0).addScaledVector(out, 0.25).normalize();
    const crown = grip.clone().addScaledVector(tilt, 132);
    const facing = out.clone().addScaledVector(DOWN, 0.5).normalize();
    return [
      ...plate(at, out, Math.max(34, hole / 2 + 12), 8),
      bar(at, elbow, 13),
      ball(elbow, 16),
      rod(grip, tilt, 210, 11),
      bar(crown, crown.clone().addScaledVector(facing, 22), 44, 50),
    ];
  },
  'body-spray': (at, out, hole) => [
    ...plate(at, out, Math.max(34, hole / 2 + 10), 8),
    bar(at, at.clone().addScaledVector(out, 20), 26, 22),
  ],
  other: (at, out, hole) => plate(at, out, hole / 2 + 14, 8),
};

const BAR_OFF = 55;
const BAR_RADIUS = 16;

/**
 * All fixtures in their places as one solid with normals; null where the job has none. Drawn only: shapes stand for any
 * make.
 */
export function fixtureSolid(shape: AlcoveShape, { panels }: Result, job: Job): BufferGeometry | null {
  const places = new Map<string, { at: Vector3; out: Vector3; hole: number }>();
  for (const name of ['back', 'left', 'right'] as const) {
    const on = onWall(shape, name, job.fit.bed + job.fit.thickness);
    for (const { id, u, v, diameter } of panels[name].holes) {
      places.set(id, { at: vector(on(u, v)), out: vector(intoRoom(name)), hole: diameter });
    }
  }
  const parts = job.fixtures.flatMap(({ id, kind }): BufferGeometry[] => {
    const place = places.get(id);
    return kind === 'grab-bar' || place === undefined ? [] : solids[kind](place.at, place.out, place.hole);
  });
  for (const ends of grabBars(job.fixtures)) {
    const found = ends.flatMap(({ id }) => places.get(id) ?? []);
    const posts = found.map(({ at, out }) => at.clone().addScaledVector(out, BAR_OFF));
    found.forEach(({ at, out, hole }, i) => {
      parts.push(
        ...plate(at, out, Math.max(38, hole / 2 + 14), 7),
        bar(at, posts[i]!, BAR_RADIUS),
        ball(posts[i]!, BAR_RADIUS),
      );
    });
    if (posts.length === 2) parts.push(bar(posts[0]!, posts[1]!, BAR_RADIUS));
  }
  return parts.length === 0 ? null : mergeGeometries(parts);
}

const vector = ([x, y, z]: Vec3): Vector3 => new Vector3(x, y, z);
