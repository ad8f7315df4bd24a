import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, Float32BufferAttribute, MeshStandardMaterial, Vector2 } from 'three';
import type { Finish, Job, Panel } from '../../core';
import { type AlcoveShape, panelSolid } from '../geometry';
import { finishTextures } from './finish-texture';
import { flatArea, flatUv } from './geometry';
import { type ShadeUniforms, shaded } from './shaded';

interface FinishedPanelProps {
  shape: AlcoveShape;
  panel: Panel;
  job: Job;
  finish: Finish;
  shade: ShadeUniforms;
  /** share of the full fineness of its picture */
  detail: number;
}

const sheets = { back: 1, left: 2, right: 3 };
const same = (point: readonly [number, number, number]) => point;

/** A panel as cut and set, its finish lying on it as on the flat sheet. */
export function FinishedPanel({ shape, panel, job, finish, shade, detail }: FinishedPanelProps) {
  const gl = useThree((state) => state.gl);
  const invalidate = useThree((state) => state.invalidate);
  const geometry = useMemo(() => {
    const { positions, indices } = panelSolid(shape, panel, job.fit.bed, same).mesh;
    const built = new BufferGeometry();
    built.setAttribute('position', new Float32BufferAttribute(positions, 3));
    built.setAttribute('uv', new BufferAttribute(flatUv(panel.name, panel, positions), 2));
    built.setIndex(indices);
    built.computeVertexNormals();
    return built;
  }, [shape, panel, job.fit.bed]);
  useEffect(() => () => geometry.dispose(), [geometry]);

  const finishKey = JSON.stringify({ ...finish, trim: null });
  const areaKey = JSON.stringify(flatArea(panel));
  // biome-ignore lint/correctness/useExhaustiveDependencies: finish and area are plain values, compared by their text
  const material = useMemo(() => {
    const textures = finishTextures(gl, finish, { area: flatArea(panel), sheet: sheets[panel.name], detail });
    const made = new MeshStandardMaterial({
      map: textures.colour,
      normalMap: textures.normal,
      normalScale: new Vector2(1, 1),
      roughness: 0.9 - 0.8 * finish.gloss,
    });
    made.onBeforeCompile = shaded(shade);
    made.customProgramCacheKey = () => 'shaded';
    made.addEventListener('dispose', textures.dispose);
    return made;
  }, [gl, shade, finishKey, areaKey, detail]);
  useEffect(() => {
    invalidate();
    return () => material.dispose();
  }, [material, invalidate]);
  return <mesh geometry={geometry} material={material} castShadow receiveShadow />;
}
