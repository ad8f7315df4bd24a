import {
  Color,
  GLSL3,
  LinearFilter,
  LinearMipmapLinearFilter,
  Mesh,
  NoColorSpace,
  OrthographicCamera,
  PlaneGeometry,
  RawShaderMaterial,
  Scene,
  SRGBColorSpace,
  type Texture,
  Vector2,
  Vector4,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import fragment from '../../../shaders/finish.frag?raw';
import vertex from '../../../shaders/finish.vert?raw';
import type { Finish } from '../../core';
import type { FlatArea } from './geometry';

export interface FinishTextures {
  colour: Texture;
  normal: Texture;
  dispose(): void;
}

const looks: Record<Finish['look'], number> = { plain: 0, stone: 1, ribbed: 2, 'large-format': 3 };

/** Pixels per mm, by what has the finest detail, and the most pixels along a side. */
const fineness: Record<Finish['look'], number> = { plain: 0.05, stone: 0.5, ribbed: 0.75, 'large-format': 0.75 };
const MOST = 2048;

/**
 * Paints a finish over a panel's flat area, once: colour and normal, each from the sheet's own corner, so that a figure
 * lies where it will on the cut sheet.
 * @param sheet which of the job's sheets: no two have the same figure
 */
export function finishTextures(
  gl: WebGLRenderer,
  finish: Finish,
  area: FlatArea,
  sheet: number,
  detail = 1,
): FinishTextures {
  const along = (mm: number) => Math.max(16, Math.min(MOST, Math.round(mm * fineness[finish.look] * detail)));
  const [width, height] = [along(area.width), along(area.height)];
  const material = new RawShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: vertex,
    fragmentShader: fragment,
    depthTest: false,
    uniforms: {
      look: { value: looks[finish.look] },
      wanted: { value: 0 },
      colour: { value: new Color(finish.colour) },
      second: { value: new Color(finish.second) },
      size: { value: finish.size },
      seed: { value: finish.seed + 977 * sheet },
      area: { value: new Vector4(area.left, area.bottom, area.width, area.height) },
      sheet: { value: new Vector2(area.sheet.width, area.sheet.height) },
      texel: { value: new Vector2(area.width / width, area.height / height) },
    },
  });
  const plane = new PlaneGeometry(2, 2);
  const scene = new Scene().add(new Mesh(plane, material));
  const camera = new OrthographicCamera();
  const before = gl.getRenderTarget();
  const painted = (wanted: number, colorSpace: typeof SRGBColorSpace | typeof NoColorSpace) => {
    const target = new WebGLRenderTarget(width, height, {
      colorSpace,
      depthBuffer: false,
      generateMipmaps: true,
      minFilter: LinearMipmapLinearFilter,
      magFilter: LinearFilter,
      anisotropy: Math.min(8, gl.capabilities.getMaxAnisotropy()),
    });
    material.uniforms.wanted!.value = wanted;
    gl.setRenderTarget(target);
    gl.render(scene, camera);
    return target;
  };
  const [colour, normal] = [painted(0, SRGBColorSpace), painted(1, NoColorSpace)];
  gl.setRenderTarget(before);
  plane.dispose();
  material.dispose();
  return {
    colour: colour.texture,
    normal: normal.texture,
    dispose: () => {
      colour.dispose();
      normal.dispose();
    },
  };
}
