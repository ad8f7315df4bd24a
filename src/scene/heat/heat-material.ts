import { Color, DataTexture, DoubleSide, LinearFilter, ShaderMaterial } from 'three';
import fragment from '../../../shaders/heat.frag?raw';
import vertex from '../../../shaders/heat.vert?raw';
import { SCALE_ENTRIES, scaleColours } from './scale';

export interface HeatLook {
  /** mm at either end of the scale */
  range: number;
  /** mm from contour to contour */
  interval: number;
  assumed: boolean;
  /** device pixels in a CSS pixel */
  pixels: number;
}

const screen = (hex: string): Color => new Color().setStyle(hex, '');

/** Paints a heat mesh; its colours reach the screen as they stand in the scale. */
export function heatMaterial(): ShaderMaterial {
  const scale = new DataTexture(new Uint8Array(scaleColours().flatMap((colour) => [...colour, 255])), SCALE_ENTRIES, 1);
  scale.minFilter = LinearFilter;
  scale.magFilter = LinearFilter;
  scale.needsUpdate = true;
  return new ShaderMaterial({
    vertexShader: vertex,
    fragmentShader: fragment,
    side: DoubleSide,
    polygonOffset: true,
    polygonOffsetFactor: 2,
    polygonOffsetUnits: 2,
    uniforms: {
      scale: { value: scale },
      range: { value: 1 },
      interval: { value: 1 },
      assumed: { value: 0 },
      pixels: { value: 1 },
      ink: { value: screen('#17252a') },
      paper: { value: screen('#f3f1ec') },
    },
  });
}

export function setHeatLook({ uniforms }: ShaderMaterial, { range, interval, assumed, pixels }: HeatLook): void {
  uniforms.range!.value = range;
  uniforms.interval!.value = interval;
  uniforms.assumed!.value = assumed ? 1 : 0;
  uniforms.pixels!.value = pixels;
}

export function freeHeatMaterial(material: ShaderMaterial): void {
  (material.uniforms.scale!.value as DataTexture).dispose();
  material.dispose();
}
