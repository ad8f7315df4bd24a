import { useEffect, useMemo } from 'react';
import { MeshStandardMaterial, type MeshStandardMaterialParameters } from 'three';
import { type ShadeUniforms, shaded } from './shaded';

/** A physically based material that loses light near the alcove's corners; freed when it changes. */
export function useStandard(shade: ShadeUniforms, parameters: MeshStandardMaterialParameters): MeshStandardMaterial {
  const key = JSON.stringify(parameters);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the parameters are plain values, compared by their text
  const material = useMemo(() => {
    const made = new MeshStandardMaterial(parameters);
    made.onBeforeCompile = shaded(shade);
    made.customProgramCacheKey = () => 'shaded';
    return made;
  }, [shade, key]);
  useEffect(() => () => material.dispose(), [material]);
  return material;
}
