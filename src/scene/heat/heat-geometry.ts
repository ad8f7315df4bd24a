import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { HeatMesh } from './heat-mesh';

/** A heat mesh as the graphics card takes it. */
export function heatGeometry({ positions, indices, deviation, half, spots }: HeatMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(positions, 3));
  geometry.setAttribute('deviation', new Float32BufferAttribute(deviation, 1));
  geometry.setAttribute('halfWidth', new Float32BufferAttribute(half, 1));
  geometry.setAttribute('spot', new Float32BufferAttribute(spots, 2));
  geometry.setIndex(indices);
  return geometry;
}
