import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import { Matrix4 } from 'three';
import type { Projection } from './lasso';

export type ReadProjection = () => Projection;

/** Hands out how the drawing shows a place just now. */
export function ProjectionReader({ onReady }: { onReady: (read: () => ReadProjection) => void }) {
  const get = useThree((state) => state.get);
  useEffect(() => {
    onReady(() => () => {
      const { camera, size } = get();
      camera.updateMatrixWorld();
      const matrix = new Matrix4().multiplyMatrices(camera.projectionMatrix, camera.matrixWorldInverse);
      return { matrix: matrix.elements, width: size.width, height: size.height };
    });
  }, [get, onReady]);
  return null;
}
