import { Line } from '@react-three/drei';
import type { Vec3 } from './geometry';

interface PolylineProps {
  points: readonly Vec3[];
  colour: string;
  width: number;
  closed?: boolean;
  dashed?: boolean;
  throughWalls?: boolean;
}

/** A line of constant width on the screen, in pixels. */
export function Polyline({
  points,
  colour,
  width,
  closed = false,
  dashed = false,
  throughWalls = false,
}: PolylineProps) {
  const all = closed && points[0] ? [...points, points[0]] : points;
  return (
    <Line
      points={all.map(([x, y, z]): [number, number, number] => [x, y, z])}
      color={colour}
      lineWidth={width}
      dashed={dashed}
      dashSize={30}
      gapSize={18}
      depthTest={!throughWalls}
      renderOrder={throughWalls ? 3 : 0}
      raycast={() => null}
    />
  );
}
