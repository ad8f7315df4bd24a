import type { GLTF } from '@gltf-transform/core';
import { ScanFault } from '../fault';

const componentBytes: Record<number, number> = { 5120: 1, 5121: 1, 5122: 2, 5123: 2, 5125: 4, 5126: 4 };
const components: Record<string, number> = { SCALAR: 1, VEC2: 2, VEC3: 3, VEC4: 4, MAT2: 4, MAT3: 9, MAT4: 16 };

/**
 * Refuses a glTF whose parts name parts that are not there, or whose accessors reach past their bytes, before it is read.
 * Parts are counted from 0, as they are in the file.
 * @param resources bytes of the buffers that came with the file, by their names
 * @throws ScanFault that names the part
 */
export function checkReferences(
  name: string,
  { scenes = [], nodes = [], meshes = [], accessors = [], bufferViews = [], buffers = [] }: GLTF.IGLTF,
  resources: Readonly<Record<string, Uint8Array>>,
): void {
  const fault = (what: string) => new ScanFault(`${name} is damaged: ${what}. Save the scan again, or as PLY.`);
  const named = (who: string, what: string, index: number | undefined, { length }: readonly unknown[]): void => {
    if (index === undefined || (Number.isInteger(index) && index >= 0 && index < length)) return;
    const there = length === 0 ? 'there is none' : `the last is ${length - 1}`;
    throw fault(`${who} names ${what} ${JSON.stringify(index)}, but ${there}`);
  };
  for (const [at, { nodes: placed = [] }] of scenes.entries()) {
    for (const node of placed) named(`scene ${at}`, 'node', node, nodes);
  }
  for (const [at, { children = [], mesh }] of nodes.entries()) {
    for (const child of children) named(`node ${at}`, 'node', child, nodes);
    named(`node ${at}`, 'mesh', mesh, meshes);
  }
  for (const [at, { primitives }] of meshes.entries()) {
    for (const { attributes, indices } of primitives) {
      named(`mesh ${at}`, 'accessor', attributes.POSITION, accessors);
      named(`mesh ${at}`, 'accessor', indices, accessors);
    }
  }
  for (const [at, { buffer, byteOffset = 0, byteLength, extensions }] of bufferViews.entries()) {
    named(`buffer view ${at}`, 'buffer', buffer, buffers);
    const { uri } = buffers[buffer] ?? {};
    if (extensions || uri?.startsWith('data:')) continue;
    const held = resources[uri ?? '@glb.bin']?.length ?? 0;
    if (!(byteOffset >= 0 && byteLength >= 0 && byteOffset + byteLength <= held)) {
      throw fault(`buffer view ${at} ends at byte ${byteOffset + byteLength} of buffer ${buffer}, which holds ${held}`);
    }
  }
  for (const [at, { bufferView, byteOffset = 0, componentType, count, type }] of accessors.entries()) {
    const who = `accessor ${at}`;
    named(who, 'buffer view', bufferView, bufferViews);
    const size = (componentBytes[componentType] ?? Number.NaN) * (components[type] ?? Number.NaN);
    if (Number.isNaN(size)) throw fault(`${who} is of a type that glTF does not have`);
    if (!(Number.isInteger(count) && count >= 0)) throw fault(`${who} holds ${JSON.stringify(count)} values`);
    const view = bufferView === undefined ? undefined : bufferViews[bufferView];
    if (!view || view.extensions) continue;
    const needed = count === 0 ? 0 : byteOffset + (count - 1) * (view.byteStride ?? size) + size;
    if (!(byteOffset >= 0 && needed <= view.byteLength)) {
      throw fault(`${who} needs ${needed} bytes of buffer view ${bufferView}, which holds ${view.byteLength}`);
    }
  }
}
