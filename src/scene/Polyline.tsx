import { useEffect, useMemo } from 'react';
import { Line2 } from 'three/examples/jsm/lines/Line2.js';
import { LineGeometry } from 'three/examples/jsm/lines/LineGeometry.js';
import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js';
import type { Vec3 } from './geometry';

interface PolylineProps {
  points: readonly Vec3[];
  colour: string;
  /** on the screen, px */
  width: number;
  closed?: boolean;
  dashed?: boolean;
  throughWalls?: boolean;
}

/** Length of a dash and of the space after it, mm. */
const dash = { dashSize: 30, gapSize: 18 };

/** A line of constant width on the screen. It cannot be picked. */
export function Polyline({
  points,
  colour,
  width,
  closed = false,
  dashed = false,
  throughWalls = false,
}: PolylineProps) {
  const line = useMemo(() => {
    const all = closed && points[0] ? [...points, points[0]] : points;
    const geometry = new LineGeometry().setPositions(all.flat());
    const material = new LineMaterial({ color: colour, linewidth: width, dashed, ...dash, depthTest: !throughWalls });
    const built = new Line2(geometry, material).computeLineDistances();
    built.renderOrder = throughWalls ? 3 : 0;
    built.raycast = () => undefined;
    return built;
  }, [points, colour, width, closed, dashed, throughWalls]);
  useEffect(
    () => () => {
      line.geometry.dispose();
      line.material.dispose();
    },
    [line],
  );
  return <primitive object={line} />;
}
