import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { BufferGeometry, Float32BufferAttribute, MeshStandardMaterial } from 'three';
import type { Finish, Job } from '../../core';
import { BuiltMesh } from '../BuiltMesh';
import { type AlcoveShape, joinMeshes, type MeshData, rimSolid } from '../geometry';
import { finishTextures } from './finish-texture';
import type { Room } from './geometry';
import { useStandard } from './materials';
import { type ShadeUniforms, shaded } from './shaded';

interface SurroundingsProps {
  shape: AlcoveShape;
  room: Room;
  job: Job;
  shade: ShadeUniforms;
}

/** What is there before and after: painted walls, ceiling, floor, tub or base. */
export function Surroundings({ shape, room, job, shade }: SurroundingsProps) {
  const walls = useMemo((): MeshData => joinMeshes(room.walls), [room]);
  const tub = useMemo(() => rimSolid(shape, job.rim, (point) => point).mesh, [shape, job.rim]);
  const paint = useStandard(shade, { color: '#c6c9c1', roughness: 0.95 });
  const lime = useStandard(shade, { color: '#f4f3ef', roughness: 1, emissive: '#f4f3ef', emissiveIntensity: 0.22 });
  const wood = useStandard(shade, { color: '#f2f1ed', roughness: 0.5 });
  const enamel = useStandard(shade, { color: '#f7f7f5', roughness: 0.13 });
  return (
    <>
      <BuiltMesh data={walls} material={paint} receiveShadow />
      <BuiltMesh data={room.ceilingMesh} material={lime} />
      <BuiltMesh data={room.skirting} material={wood} receiveShadow />
      <Floor room={room} shade={shade} />
      <BuiltMesh data={tub} material={enamel} castShadow receiveShadow />
    </>
  );
}

const floorFinish: Finish = {
  look: 'large-format',
  colour: '#a39b8f',
  second: '#857d71',
  size: 300,
  seed: 5,
  gloss: 0.3,
  trim: '#ffffff',
};
/** The floor's picture repeats after so many mm; its joints are drawn twice as wide as on a wall. */
const REPEAT = 2400;
const SCALE = 2;
/** Seen from afar only: its picture is painted coarser than that of a panel. */
const FLOOR_DETAIL = 0.45;

function Floor({ room, shade }: Pick<SurroundingsProps, 'room' | 'shade'>) {
  const gl = useThree((state) => state.gl);
  const geometry = useMemo(() => {
    const { positions, indices } = room.floorMesh;
    const built = new BufferGeometry().setAttribute('position', new Float32BufferAttribute(positions, 3));
    const uv = positions.flatMap((x, i) => (i % 3 === 0 ? [x / REPEAT, -positions[i + 2]! / REPEAT] : []));
    built.setAttribute('uv', new Float32BufferAttribute(uv, 2));
    built.setIndex(indices);
    built.computeVertexNormals();
    return built;
  }, [room]);
  const material = useMemo(() => {
    const side = REPEAT / SCALE;
    const area = { left: 0, bottom: 0, width: side, height: side, sheet: { width: side, height: side } };
    const textures = finishTextures(gl, floorFinish, { area, sheet: 0, detail: FLOOR_DETAIL, repeats: true });
    const made = new MeshStandardMaterial({ map: textures.colour, normalMap: textures.normal, roughness: 0.6 });
    made.onBeforeCompile = shaded(shade);
    made.customProgramCacheKey = () => 'shaded';
    made.addEventListener('dispose', textures.dispose);
    return made;
  }, [gl, shade]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  useEffect(() => () => material.dispose(), [material]);
  return <mesh geometry={geometry} material={material} receiveShadow />;
}
