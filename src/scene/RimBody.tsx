import { useMemo } from 'react';
import type { Job } from '../core';
import { BuiltMesh } from './BuiltMesh';
import { colours } from './colours';
import { type AlcoveShape, rimSolid, type Vec3 } from './geometry';

interface RimBodyProps {
  shape: AlcoveShape;
  rim: Job['rim'];
  place: (point: Vec3) => Vec3;
}

/** The tub or shower base. */
export function RimBody({ shape, rim, place }: RimBodyProps) {
  const data = useMemo(() => rimSolid(shape, rim, place), [shape, rim, place]);
  return (
    <BuiltMesh data={data}>
      <meshStandardMaterial color={colours.rim} roughness={0.35} />
    </BuiltMesh>
  );
}
