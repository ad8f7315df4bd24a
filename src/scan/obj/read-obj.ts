import { blocksOf, decimalAt, eachLine, type ReadingWatch, type ScanFile, startOfLine } from '../bytes';
import { ScanFault } from '../fault';
import type { ScanLimits } from '../limits';
import { addMeshPoints } from '../mesh-points';
import { MeshStore } from '../mesh-store';
import { PointStore } from '../point-store';
import type { RawScan } from '../raw-scan';
import { rawScanOf } from '../raw-scan-of';

const V = 118;
const F = 102;
const SLASH = 47;

const isBlank = (code: number | undefined): boolean => code === 32 || code === 9;

/** Reads the corners and faces of an OBJ file; all else in it, as normals and materials, is passed over. */
export async function readObj(file: ScanFile, watch: ReadingWatch, limits: ScanLimits): Promise<RawScan> {
  const mesh = new MeshStore(file.name, limits);
  const values: number[] = [];
  let line = 0;
  const fault = (what: string, bytes: Uint8Array, from: number, to: number) =>
    new ScanFault(
      `Line ${line.toLocaleString('en')} of ${file.name} is no ${what} ("${startOfLine(bytes, from, to)}"). The file is damaged: save the scan again.`,
    );
  await eachLine(file, blocksOf(file, watch), (bytes, start, to) => {
    line++;
    let from = start;
    while (from < to && isBlank(bytes[from])) from++;
    const kind = bytes[from];
    if ((kind !== V && kind !== F) || !isBlank(bytes[from + 1])) return;
    values.length = 0;
    for (let at = from + 1; ; ) {
      while (at < to && isBlank(bytes[at])) at++;
      if (at >= to) break;
      const begin = at;
      let end = -1;
      while (at < to && !isBlank(bytes[at])) {
        if (end < 0 && bytes[at] === SLASH) end = at;
        at++;
      }
      values.push(decimalAt(bytes, begin, end < 0 ? at : end));
    }
    if (kind === V) {
      if (values.length < 3) throw fault('corner with x, y and z', bytes, from, to);
      mesh.add(values[0]!, values[1]!, values[2]!);
      return;
    }
    for (let i = 0; i < values.length; i++) {
      const corner = values[i]! < 0 ? mesh.corners + values[i]! : values[i]! - 1;
      if (!Number.isInteger(corner) || corner < 0) throw fault('face', bytes, from, to);
      values[i] = corner;
    }
    mesh.addFace(values);
  });
  const { positions, triangles } = mesh.take();
  const store = new PointStore(limits.points, mesh.corners);
  const origin = mesh.origin ?? ([0, 0, 0] as const);
  if (triangles.length > 0) {
    addMeshPoints(positions, triangles, origin, store);
  } else {
    const [ox, oy, oz] = origin;
    for (let at = 0; at < positions.length; at += 3) {
      if (!Number.isNaN(positions[at]))
        store.add(positions[at]! + ox, positions[at + 1]! + oy, positions[at + 2]! + oz);
    }
  }
  return rawScanOf({
    format: 'OBJ',
    store,
    mesh: triangles.length > 0 ? { triangles: mesh.triangles } : null,
    unread: mesh.unread,
  });
}
