import { blocksOf, type ReadingWatch, type ScanFile } from '../bytes';
import type { MeshStore } from '../mesh-store';
import { PointStore } from '../point-store';
import type { PlyElement } from './header';
import { scalarBytes, scalarReader } from './scalar';

/** Bytes of one item; null where its length varies, as with a list. */
export function itemBytes({ properties }: PlyElement): number | null {
  return properties.some(({ count }) => count !== null)
    ? null
    : properties.reduce((sum, { type }) => sum + scalarBytes[type], 0);
}

const nativeLittle = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1;

/** Reads the corners or points of an element whose items are all of one length, block by block. */
export async function readEvenPoints(
  file: ScanFile,
  watch: ReadingWatch,
  { element, from, to, little }: { element: PlyElement; from: number; to: number; little: boolean },
  store: PointStore | MeshStore,
): Promise<void> {
  const stride = itemBytes(element)!;
  const places = (['x', 'y', 'z'] as const).map((name) => placeOf(element, name));
  const [x, y, z] = places as [Place, Place, Place];
  const type = x.type;
  const alike = y.type === type && z.type === type && little === nativeLittle && store instanceof PointStore;
  const size = scalarBytes[type];
  const aligned = alike && [stride, x.at, y.at, z.at].every((at) => at % size === 0);
  const [readX, readY, readZ] = [x, y, z].map(({ type }) => scalarReader(type, little)) as [Read, Read, Read];
  for await (const block of blocksOf(file, watch, { from, to, multipleOf: stride })) {
    if (aligned && (type === 'float32' || type === 'float64')) {
      const values = type === 'float32' ? new Float32Array(block.buffer) : new Float64Array(block.buffer);
      (store as PointStore).addEvery(values, stride / size, x.at / size, y.at / size, z.at / size);
      continue;
    }
    const view = new DataView(block.buffer);
    for (let at = 0; at + stride <= block.length; at += stride) {
      store.add(readX(view, at + x.at), readY(view, at + y.at), readZ(view, at + z.at));
    }
  }
}

type Read = ReturnType<typeof scalarReader>;

interface Place {
  /** bytes into the item */
  at: number;
  type: PlyElement['properties'][number]['type'];
}

function placeOf({ properties }: PlyElement, name: string): Place {
  let at = 0;
  for (const property of properties) {
    if (property.name === name) return { at, type: property.type };
    at += scalarBytes[property.type];
  }
  throw new Error(`an element without ${name}`);
}
