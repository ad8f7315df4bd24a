import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { colours } from '../colours';
import { Polyline } from '../Polyline';
import type { HeatWall } from './drawn-heat';
import { heatGeometry } from './heat-geometry';
import { freeHeatMaterial, heatMaterial, setHeatLook } from './heat-material';

interface HeatWallMeshProps {
  wall: HeatWall;
  range: number;
  interval: number;
}

/** One wall painted by its deviation. */
export function HeatWallMesh({ wall: { mesh, field }, range, interval }: HeatWallMeshProps) {
  const pixels = useThree(({ gl }) => gl.getPixelRatio());
  const invalidate = useThree((state) => state.invalidate);
  const geometry = useMemo(() => heatGeometry(mesh), [mesh]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  const material = useMemo(heatMaterial, []);
  useEffect(() => () => freeHeatMaterial(material), [material]);
  useEffect(() => {
    setHeatLook(material, { range, interval, assumed: field.assumed, pixels });
    invalidate();
  }, [material, range, interval, field.assumed, pixels, invalidate]);
  return (
    <>
      <mesh geometry={geometry} material={material} raycast={() => null} />
      <Polyline points={mesh.outline} colour={colours.outline} width={1.25} />
    </>
  );
}
