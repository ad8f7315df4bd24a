import { useEffect, useMemo } from 'react';
import type { Job, Piece, Result } from '../../core';
import { BuiltMesh } from '../BuiltMesh';
import { type AlcoveShape, joinMeshes, type MeshData, pieceSolid } from '../geometry';
import { FinishedPanel } from './FinishedPanel';
import { fixtureSolid, sealantMesh } from './geometry';
import type { Layers } from './layers';
import { useStandard } from './materials';
import type { ShadeUniforms } from './shaded';

interface FinishedProps {
  shape: AlcoveShape;
  result: Result;
  job: Job;
  layers: Layers;
  shade: ShadeUniforms;
  detail: number;
}

const names = ['back', 'left', 'right'] as const;
const same = (point: readonly [number, number, number]) => point;
const solidOf = (pieces: readonly Piece[]): MeshData | null =>
  pieces.length === 0 ? null : joinMeshes(pieces.map((piece) => pieceSolid(piece, same).mesh));

/** What is added to the alcove: panels with their finish, legs, trim, shelves, fixtures, sealant. */
export function Finished({ shape, result, job, layers, shade, detail }: FinishedProps) {
  const { finish } = job;
  const { pieces } = result;
  const trim = useMemo(() => solidOf(pieces.trim), [pieces]);
  const shelves = useMemo(() => solidOf(pieces.shelves), [pieces]);
  const legs = useMemo(() => solidOf(pieces.legs), [pieces]);
  const sealant = useMemo(() => sealantMesh(shape, result, job), [shape, result, job]);
  const fixtures = useMemo(() => fixtureSolid(shape, result, job), [shape, result, job]);
  useEffect(() => () => fixtures?.dispose(), [fixtures]);
  const roughness = 0.9 - 0.8 * finish.gloss;
  const trimPaint = useStandard(shade, { color: finish.trim, roughness: 0.42 });
  const shelfFace = useStandard(shade, { color: finish.colour, roughness });
  const bead = useStandard(shade, { color: '#f4f3ef', roughness: 0.5, side: 2 });
  const metal = useStandard(shade, { color: '#c9ccce', roughness: 0.17, metalness: 1 });
  return (
    <>
      {layers.panels &&
        names.map((name) => (
          <FinishedPanel key={name} {...{ shape, job, finish, shade, detail }} panel={result.panels[name]} />
        ))}
      {layers.panels && legs && <BuiltMesh data={legs} material={shelfFace} castShadow receiveShadow />}
      {layers.trim && trim && <BuiltMesh data={trim} material={trimPaint} castShadow receiveShadow />}
      {layers.shelves && shelves && <BuiltMesh data={shelves} material={shelfFace} castShadow receiveShadow />}
      {layers.sealant && layers.panels && <BuiltMesh data={sealant} material={bead} receiveShadow />}
      {layers.fixtures && fixtures && <mesh geometry={fixtures} material={metal} castShadow receiveShadow />}
    </>
  );
}
