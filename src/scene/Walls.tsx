import { useMemo } from 'react';
import type { WallName } from '../core';
import { BuiltMesh } from './BuiltMesh';
import { colours } from './colours';
import { type AlcoveShape, type Vec3, wallMesh } from './geometry';

const walls: readonly WallName[] = ['back', 'left', 'right'];

interface WallsProps {
  shape: AlcoveShape;
  place: (point: Vec3) => Vec3;
}

/** The three measured walls, seen from the room side only, so that one looks past the nearer one from outside. */
export function Walls({ shape, place }: WallsProps) {
  const meshes = useMemo(() => walls.map((wall) => ({ wall, data: wallMesh(shape, wall, place) })), [shape, place]);
  return meshes.map(({ wall, data }) => (
    <BuiltMesh key={wall} data={data}>
      <meshStandardMaterial
        color={colours.wall}
        roughness={0.95}
        polygonOffset
        polygonOffsetFactor={2}
        polygonOffsetUnits={2}
      />
    </BuiltMesh>
  ));
}
