import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';

/** Tells when the graphics card takes the drawing away. */
export function LossWatch({ onLost }: { onLost: () => void }) {
  const canvas = useThree(({ gl }) => gl.domElement);
  useEffect(() => {
    canvas.addEventListener('webglcontextlost', onLost);
    return () => canvas.removeEventListener('webglcontextlost', onLost);
  }, [canvas, onLost]);
  return null;
}
