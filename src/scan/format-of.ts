import type { ScanFile } from './bytes';
import { ScanFault } from './fault';
import type { RawScan } from './raw-scan';

const others: Record<string, string> = {
  e57: 'E57',
  las: 'LAS',
  laz: 'LAZ',
  pcd: 'PCD',
  ptx: 'PTX',
  stl: 'STL',
  fbx: 'FBX',
  dae: 'DAE',
  usdz: 'USDZ',
  zip: 'ZIP',
};

/**
 * The format of a file, told by its first bytes, and by its name where these leave it open.
 * @param start the first bytes of the file
 */
export function formatOf({ name }: ScanFile, start: Uint8Array): RawScan['format'] {
  const head = String.fromCharCode(...start.subarray(0, 4));
  const ending = /\.([a-z0-9]+)$/i.exec(name)?.[1]?.toLowerCase() ?? '';
  if (/^ply[\r\n]/.test(head)) return 'PLY';
  if (head === 'glTF') return 'glTF';
  if (ending === 'obj') return 'OBJ';
  if (ending === 'gltf' || ending === 'glb') return 'glTF';
  if (ending === 'ply') {
    throw new ScanFault(
      `${name} does not begin with the line "ply", so it is no PLY file or is damaged. Copy it again from the scanner.`,
    );
  }
  const other = others[ending];
  if (other) throw new ScanFault(`${other} files are not read here. Save the scan as PLY, XYZ, CSV, OBJ or GLB.`);
  return 'text';
}
