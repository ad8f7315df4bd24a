import { ScanFault } from '../fault';
import type { ScanLimits } from '../limits';

/** The parts of a glTF file's JSON (Khronos glTF 2.0) that are looked at before it is read. */
interface GltfJson {
  asset?: unknown;
  accessors?: { count?: number }[];
  meshes?: { primitives?: { attributes?: Record<string, number>; [key: string]: unknown }[] }[];
  nodes?: { children?: number[] }[];
  [key: string]: unknown;
}

/** What a scan's shape does not need, and what would only take memory. */
const passedOver = ['animations', 'cameras', 'images', 'materials', 'samplers', 'skins', 'textures'];

/** The JSON with what makes the shape alone: positions and faces. Refuses what could not be read to an end. */
export function leanJson(name: string, json: GltfJson, limits: ScanLimits): GltfJson {
  if (typeof json !== 'object' || json === null || !json.asset) {
    throw new ScanFault(
      `${name} is no glTF file: its JSON has no part "asset", which says which version it is. Save the scan again as GLB.`,
    );
  }
  const draco = [json.extensionsRequired, json.extensionsUsed].some(
    (list) => Array.isArray(list) && list.includes('KHR_draco_mesh_compression'),
  );
  if (draco) {
    throw new ScanFault(
      `${name} is compressed with Draco, which is not read here. Save it as GLB without compression, or as PLY.`,
    );
  }
  const most = 3 * limits.triangles;
  const large = (json.accessors ?? []).findIndex(({ count = 0 }) => !(count <= most));
  if (large >= 0) {
    throw new ScanFault(
      `Accessor ${large} of ${name} claims ${String(json.accessors![large]!.count)} values, more than the ${most.toLocaleString('en')} that can be held here. Save the scan as points (PLY).`,
    );
  }
  const looped = nodeInLoop(json.nodes ?? []);
  if (looped >= 0) {
    throw new ScanFault(
      `${name} is damaged: node ${looped} contains itself or is part of two others. Save the scan again.`,
    );
  }
  const lean: GltfJson = { ...json };
  for (const key of passedOver) delete lean[key];
  lean.nodes = json.nodes?.map((node) => without(node, ['skin', 'camera', 'extensions']));
  lean.meshes = json.meshes?.map((mesh) => ({
    primitives: (mesh.primitives ?? []).map(({ attributes, indices, mode }) => ({
      attributes: { ...(attributes?.POSITION !== undefined && { POSITION: attributes.POSITION }) },
      ...(indices !== undefined && { indices }),
      ...(mode !== undefined && { mode }),
    })),
  }));
  const read = ['KHR_mesh_quantization', 'EXT_meshopt_compression'];
  for (const key of ['extensionsRequired', 'extensionsUsed']) {
    const list = json[key];
    if (Array.isArray(list)) lean[key] = list.filter((extension) => read.includes(extension));
  }
  delete lean.extensions;
  return lean;
}

const without = <T extends object>(object: T, keys: readonly string[]): T =>
  Object.fromEntries(Object.entries(object).filter(([key]) => !keys.includes(key))) as T;

/** The first node that has two parents or is its own descendant; -1 where there is none. */
function nodeInLoop(nodes: readonly { children?: number[] }[]): number {
  const parent = new Map<number, number>();
  for (const [at, { children = [] }] of nodes.entries()) {
    for (const child of children) {
      if (parent.has(child)) return child;
      parent.set(child, at);
    }
  }
  return nodes.findIndex((_, start) => {
    let node = parent.get(start);
    for (let steps = 0; node !== undefined; steps++) {
      if (steps > nodes.length) return true;
      node = parent.get(node);
    }
    return false;
  });
}
