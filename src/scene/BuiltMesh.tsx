import type { ThreeElements } from '@react-three/fiber';
import { type ReactNode, useEffect, useMemo } from 'react';
import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { MeshData } from './geometry';

type BuiltMeshProps = Omit<ThreeElements['mesh'], 'geometry' | 'children'> & { data: MeshData; children?: ReactNode };

/** A mesh from built triangles; frees them on the graphics card when they change. */
export function BuiltMesh({ data, children, ...mesh }: BuiltMeshProps) {
  const geometry = useMemo(() => {
    const built = new BufferGeometry();
    built.setAttribute('position', new Float32BufferAttribute(data.positions, 3));
    built.setIndex(data.indices);
    built.computeVertexNormals();
    return built;
  }, [data]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  return (
    <mesh geometry={geometry} {...mesh}>
      {children}
    </mesh>
  );
}
