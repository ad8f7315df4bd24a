import { useMemo } from 'react';
import { colours } from './colours';
import { type AlcoveShape, controlLines, type Vec3 } from './geometry';
import { Polyline } from './Polyline';
import { Tag } from './Tag';

interface ControlLinesProps {
  shape: AlcoveShape;
  place: (point: Vec3) => Vec3;
  tags: boolean;
}

/** Level line (unbroken) and plumb line (broken), as drawn on the walls. */
export function ControlLines({ shape, place, tags }: ControlLinesProps) {
  const lines = useMemo(() => controlLines(shape, place), [shape, place]);
  return lines.map(({ name, points }) => (
    <group key={name}>
      <Polyline points={points} colour={colours.controlLine} width={2.5} dashed={name === 'plumb line'} throughWalls />
      {tags && (
        <Tag at={name === 'plumb line' ? points[points.length - 1]! : points[0]!} kind="line">
          {name}
        </Tag>
      )}
    </group>
  ));
}
