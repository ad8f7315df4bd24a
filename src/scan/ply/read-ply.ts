import { bytesOf, type ReadingWatch, type ScanFile } from '../bytes';
import { ScanFault } from '../fault';
import type { ScanLimits } from '../limits';
import { addMeshPoints } from '../mesh-points';
import { MeshStore } from '../mesh-store';
import { PointStore } from '../point-store';
import type { RawScan } from '../raw-scan';
import { rawScanOf } from '../raw-scan-of';
import { readAscii } from './ascii';
import { itemBytes, readEvenPoints } from './even';
import { type PlyElement, plyHeader } from './header';
import { hasFaces, type ItemTaker } from './item';
import { readUneven } from './uneven';

const headBytes = 65_536;

/** Reads the points of a PLY file, or of the surfaces of a mesh in one. */
export async function readPly(file: ScanFile, watch: ReadingWatch, limits: ScanLimits): Promise<RawScan> {
  const header = plyHeader(file.name, await bytesOf(file, 0, Math.min(file.size, headBytes)));
  const vertex = header.elements.find(({ name }) => name === 'vertex');
  if (!vertex)
    throw new ScanFault(`${file.name} has no element "vertex", so it holds no points. Save the scan as points.`);
  for (const axis of ['x', 'y', 'z']) {
    if (!vertex.properties.some(({ name, count }) => name === axis && count === null)) {
      throw new ScanFault(
        `The element "vertex" of ${file.name} has no ${axis}. Save the scan with x, y and z of each point.`,
      );
    }
  }
  const faces = header.elements.find(hasFaces) ?? null;
  const points = new PointStore(limits.points, faces ? undefined : Math.min(vertex.count, file.size / 3));
  const mesh = faces && new MeshStore(file.name, limits);
  const store = mesh ?? points;
  const takerOf = (element: PlyElement): ItemTaker => {
    if (element === vertex) return { point: (x, y, z) => store.add(x, y, z) };
    return element === faces ? { face: (corners, count) => mesh!.addFace(corners, count) } : {};
  };
  const needed = header.elements.slice(
    0,
    Math.max(header.elements.indexOf(vertex), header.elements.indexOf(faces!)) + 1,
  );
  const withTakers = needed.map((element) => ({ element, taker: takerOf(element) }));

  if (header.encoding === 'ascii') {
    await readAscii(file, watch, header, withTakers);
  } else {
    const little = header.encoding === 'little';
    const [first] = needed;
    const stride = first === vertex ? itemBytes(vertex) : null;
    if (stride === null) {
      await readUneven(file, watch, header.length, little, withTakers);
    } else {
      const to = header.length + stride * vertex.count;
      if (to > file.size) throw endsTooEarly(file, vertex, Math.floor((file.size - header.length) / stride));
      await readEvenPoints(file, watch, { element: vertex, from: header.length, to, little }, store);
      if (faces) await readUneven(file, watch, to, little, withTakers.slice(1));
    }
  }
  if (mesh) {
    const { positions, triangles } = mesh.take();
    addMeshPoints(positions, triangles, mesh.origin ?? [0, 0, 0], points);
  }
  return rawScanOf({
    format: 'PLY',
    up: header.up,
    mesh: mesh && { triangles: mesh.triangles },
    store: points,
    unread: mesh?.unread,
  });
}

const endsTooEarly = (file: ScanFile, { count }: PlyElement, there: number): ScanFault =>
  new ScanFault(
    `${file.name} ends too early, at byte ${file.size.toLocaleString('en')}: it announces ${count.toLocaleString('en')} points and holds ${there.toLocaleString('en')}. Copy the file again from the scanner.`,
  );
