import type { Document, GLTF, JSONDocument, Node, Primitive } from '@gltf-transform/core';
import { bytesOf, type ReadingWatch, type ScanFile } from '../bytes';
import { ScanFault, ScanStopped } from '../fault';
import type { ScanLimits } from '../limits';
import { addMeshPoints } from '../mesh-points';
import { MeshStore } from '../mesh-store';
import { PointStore } from '../point-store';
import type { RawScan } from '../raw-scan';
import { rawScanOf } from '../raw-scan-of';
import { checkReferences } from './check-references';
import { eachTriangle } from './each-triangle';
import { leanJson } from './lean-json';

const POINTS = 0;
const TRIANGLES = 4;
const GLB_MAGIC = 0x46546c67;

/**
 * Reads the points and the surfaces of a glTF file, which by its standard is in metres with y up.
 * @param others files that came with it, which a .gltf names its buffers by
 */
export async function readGltf(
  file: ScanFile,
  watch: ReadingWatch,
  limits: ScanLimits,
  others: readonly ScanFile[],
): Promise<RawScan> {
  const whole = file.size + others.reduce((sum, { size }) => sum + size, 0);
  if (whole > limits.wholeFile) {
    throw new ScanFault(
      `${file.name} has ${Math.round(whole / 1e6)} MB; glTF is read whole, and ${limits.wholeFile / 1e6} MB is the most. Save the scan as PLY, which is read piece by piece.`,
    );
  }
  const bytes = await bytesOf(file, 0, file.size);
  watch.onProgress?.(0.3);
  const document = await opened(file, bytes, limits, others);
  watch.onProgress?.(0.6);
  const mesh = new MeshStore(file.name, limits);
  const store = new PointStore(limits.points);
  for (const node of placedNodes(document)) {
    if (watch.cancelled?.()) throw new ScanStopped();
    for (const primitive of node.getMesh()?.listPrimitives() ?? []) add(primitive, node, mesh, store);
  }
  const { positions, triangles } = mesh.take();
  addMeshPoints(positions, triangles, mesh.origin ?? [0, 0, 0], store);
  return rawScanOf({
    format: 'glTF',
    store,
    unit: 1000,
    up: '+y',
    mesh: triangles.length > 0 ? { triangles: mesh.triangles } : null,
    unread: mesh.unread,
  });
}

async function opened(
  file: ScanFile,
  bytes: Uint8Array<ArrayBuffer>,
  limits: ScanLimits,
  others: readonly ScanFile[],
): Promise<Document> {
  const [{ WebIO, Logger, Verbosity }, { KHRMeshQuantization, EXTMeshoptCompression }, { MeshoptDecoder }] =
    await Promise.all([
      import('@gltf-transform/core'),
      import('@gltf-transform/extensions'),
      import('three/examples/jsm/libs/meshopt_decoder.module.js'),
    ]);
  const io = new WebIO()
    .setLogger(new Logger(Verbosity.SILENT))
    .registerExtensions([KHRMeshQuantization, EXTMeshoptCompression])
    .registerDependencies({ 'meshopt.decoder': MeshoptDecoder });
  try {
    const given = isGlb(bytes) ? binaryParts(file.name, bytes) : await textParts(file, bytes, others);
    const json = leanJson(file.name, given.json as never, limits) as unknown as GLTF.IGLTF;
    checkReferences(file.name, json, given.resources);
    return await io.readJSON({ json, resources: given.resources });
  } catch (error) {
    if (error instanceof ScanFault) throw error;
    throw new ScanFault(
      `${file.name} is damaged: its JSON, bytes ${jsonBytes(bytes)}, does not describe surfaces or points as glTF does. Copy it again from the scanner, or save the scan as PLY.`,
    );
  }
}

const isGlb = (bytes: Uint8Array<ArrayBuffer>): boolean =>
  bytes.length >= 20 && new DataView(bytes.buffer).getUint32(0, true) === GLB_MAGIC;

/** The first and last byte of the file's JSON, counted from 1, as words. */
function jsonBytes(bytes: Uint8Array<ArrayBuffer>): string {
  const [from, to] = isGlb(bytes) ? [20, 20 + new DataView(bytes.buffer).getUint32(12, true)] : [0, bytes.length];
  return `${from + 1} to ${Math.min(to, bytes.length).toLocaleString('en')}`;
}

/** The chunks of a GLB file; its own buffer is named as the library names it. */
function binaryParts(name: string, bytes: Uint8Array<ArrayBuffer>): JSONDocument {
  const view = new DataView(bytes.buffer);
  const length = view.getUint32(12, true);
  checkChunk(name, bytes, 12, length);
  const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + length)));
  const start = 20 + length + 8;
  if (bytes.length < start) return { json, resources: {} };
  const size = view.getUint32(20 + length, true);
  checkChunk(name, bytes, 20 + length, size);
  return { json, resources: { '@glb.bin': bytes.subarray(start, start + size) } };
}

function checkChunk(name: string, bytes: Uint8Array, at: number, size: number): void {
  if (at + 8 + size <= bytes.length) return;
  throw new ScanFault(
    `${name} ends too early: its part at byte ${(at + 1).toLocaleString('en')} claims ${size.toLocaleString('en')} bytes, and ${(bytes.length - at - 8).toLocaleString('en')} are there. Copy it again from the scanner.`,
  );
}

async function textParts(
  file: ScanFile,
  bytes: Uint8Array<ArrayBuffer>,
  others: readonly ScanFile[],
): Promise<JSONDocument> {
  const json = JSON.parse(new TextDecoder().decode(bytes)) as GLTF.IGLTF;
  const resources: Record<string, Uint8Array<ArrayBuffer>> = {};
  for (const { uri } of json.buffers ?? []) {
    if (uri === undefined || uri.startsWith('data:')) continue;
    const name = decodeURIComponent(uri.split('/').at(-1)!);
    const other = others.find((each) => each.name === name);
    if (!other) {
      throw new ScanFault(
        `${file.name} keeps its points in "${name}". Choose both files together, or save the scan as one GLB file.`,
      );
    }
    resources[uri] = await bytesOf(other, 0, other.size);
  }
  return { json, resources };
}

/** The nodes of the scene, or all where there is none. */
function placedNodes(document: Document): Node[] {
  const root = document.getRoot();
  const scene = root.getDefaultScene() ?? root.listScenes()[0];
  if (!scene) return root.listNodes();
  const nodes: Node[] = [];
  scene.traverse((node) => nodes.push(node));
  return nodes;
}

function add(primitive: Primitive, node: Node, mesh: MeshStore, store: PointStore): void {
  const position = primitive.getAttribute('POSITION');
  if (position?.getElementSize() !== 3) return;
  const m = node.getWorldMatrix();
  const surface = primitive.getMode() >= TRIANGLES;
  const into = surface ? mesh : store;
  const first = mesh.corners;
  const count = position.getCount();
  const p: number[] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    position.getElement(i, p);
    const [x, y, z] = p as [number, number, number];
    into.add(
      m[0] * x + m[4] * y + m[8] * z + m[12],
      m[1] * x + m[5] * y + m[9] * z + m[13],
      m[2] * x + m[6] * y + m[10] * z + m[14],
    );
  }
  if (primitive.getMode() === POINTS || !surface) return;
  const indices = primitive.getIndices()?.getArray() ?? null;
  eachTriangle(primitive.getMode(), indices, count, (a, b, c) => mesh.addFace([first + a, first + b, first + c]));
}
