import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, Sphere, Vector3 } from 'three';

interface ScanPointsProps {
  /** x y z of each point drawn, shared by all that are drawn of a scan */
  positions: BufferAttribute;
  /** which of them, by number */
  numbers: Uint32Array;
  colour: string;
  /** px */
  size: number;
  opacity?: number;
  /** drawn over all that lies before them */
  onTop?: boolean;
}

/** Some of the points of a scan in one colour. */
export function ScanPoints({ positions, numbers, colour, size, opacity = 1, onTop = false }: ScanPointsProps) {
  const invalidate = useThree((state) => state.invalidate);
  const geometry = useMemo(() => {
    const made = new BufferGeometry();
    made.setAttribute('position', positions);
    made.setIndex(new BufferAttribute(numbers, 1));
    made.boundingSphere = new Sphere(new Vector3(), Number.POSITIVE_INFINITY);
    return made;
  }, [positions, numbers]);
  useEffect(() => {
    invalidate();
    return () => geometry.dispose();
  }, [geometry, invalidate]);
  return (
    <points geometry={geometry} frustumCulled={false} renderOrder={onTop ? 1 : 0}>
      <pointsMaterial
        color={colour}
        size={size}
        sizeAttenuation={false}
        transparent={opacity < 1}
        opacity={opacity}
        depthTest={!onTop}
        toneMapped={false}
      />
    </points>
  );
}
