import type { Job, Reading, Side, WallName } from '../../src/core/job-file';
import type { TrueAlcove, TrueSide } from './trueAlcove';

const otherSide = (side: Side): Side => (side === 'left' ? 'right' : 'left');
const otherWall = (wall: WallName): WallName => (wall === 'back' ? 'back' : otherSide(wall));

/** The alcove seen in a mirror: left and right change places. */
export function mirrored(alcove: TrueAlcove): TrueAlcove {
  const negated = (side: TrueSide): TrueSide => ({
    c: -side.c,
    y: -side.y,
    z: -side.z,
    yz: -side.yz,
    yy: -side.yy,
    zz: -side.zz,
  });
  return {
    back: { ...alcove.back, xy: -alcove.back.xy },
    left: negated(alcove.right),
    right: negated(alcove.left),
    rim: { ...alcove.rim, x: -alcove.rim.x },
    front: { left: alcove.front.right, right: alcove.front.left },
    humps: alcove.humps.map((hump) => ({
      ...hump,
      wall: otherWall(hump.wall),
      at: hump.wall === 'back' ? -hump.at : hump.at,
    })),
  };
}

/** The same readings taken in the mirrored alcove. */
export function mirroredReading(reading: Reading): Reading {
  switch (reading.kind) {
    case 'tape-to-corner':
    case 'square':
    case 'angle':
      return { ...reading, side: otherSide(reading.side) };
    case 'tape-to-rim':
    case 'plumb':
      return { ...reading, wall: otherWall(reading.wall), at: reading.wall === 'back' ? -reading.at : reading.at };
    case 'span':
      return reading;
    case 'straightedge': {
      const turn = reading.wall === 'back' ? -1 : 1;
      return {
        ...reading,
        wall: otherWall(reading.wall),
        from: { ...reading.from, at: turn * reading.from.at },
        to: { ...reading.to, at: turn * reading.to.at },
      };
    }
    case 'diagonal':
      return {
        ...reading,
        from: { ...reading.from, side: otherSide(reading.from.side) },
        to: { ...reading.to, side: otherSide(reading.to.side) },
      };
    case 'depth':
      return { ...reading, wall: otherSide(reading.wall) };
  }
}

/** The same job in the mirrored alcove. */
export function mirroredJob(job: Job): Job {
  const { keep } = job.fit;
  return {
    ...job,
    readings: job.readings.map(mirroredReading),
    fixtures: job.fixtures.map((fixture) => {
      if (fixture.wall === 'back') return { ...fixture, fromPlumbLine: -fixture.fromPlumbLine };
      return fixture.wall === 'left' ? { ...fixture, wall: 'right' } : { ...fixture, wall: 'left' };
    }),
    fit: {
      ...job.fit,
      wetWall: otherWall(job.fit.wetWall),
      keep: {
        back: keep.back.map((edge) => (edge === 'left' || edge === 'right' ? otherSide(edge) : edge)),
        left: keep.right,
        right: keep.left,
      },
    },
    sheets: { ...job.sheets, left: job.sheets.right, right: job.sheets.left },
    trim: { ...job.trim, outerLine: { left: job.trim.outerLine.right, right: job.trim.outerLine.left } },
    shelves: job.shelves.map((shelf) => ({ ...shelf, corner: otherSide(shelf.corner) })),
  };
}
