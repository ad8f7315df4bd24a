import {
  ClampToEdgeWrapping,
  Color,
  GLSL3,
  LinearFilter,
  LinearMipmapLinearFilter,
  Mesh,
  NoColorSpace,
  OrthographicCamera,
  PlaneGeometry,
  RawShaderMaterial,
  RepeatWrapping,
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

const looks: Record<Finish['look'], number> = { plain: 0, stone: 1, ribbed: 2, 'large-format': 3 };

export interface Painted {
  colour: Texture;
  normal: Texture;
  dispose(): void;
}

/** What is to be painted: a finish over a panel's flat area, so many pixels wide and high. */
export interface Painting {
  figure: Omit<Finish, 'trim' | 'gloss'>;
  area: FlatArea;
  /** which of the job's sheets: no two have the same figure */
  sheet: number;
  width: number;
  height: number;
  /** goes on from edge to edge, instead of ending there */
  repeats: boolean;
}

/**
 * Paints finishes on one renderer, each as colour and normal from the sheet's own corner, so that a figure lies where it
 * will on the cut sheet. Lives as long as its renderer: a program compiled anew for each picture costs more than the
 * picture where there is no graphics card.
 */
export class FinishPainter {
  private readonly material = new RawShaderMaterial({
    glslVersion: GLSL3,
    vertexShader: vertex,
    fragmentShader: fragment,
    depthTest: false,
    uniforms: {
      look: { value: 0 },
      wanted: { value: 0 },
      colour: { value: new Color() },
      second: { value: new Color() },
      size: { value: 0 },
      seed: { value: 0 },
      area: { value: new Vector4() },
      sheet: { value: new Vector2() },
      texel: { value: new Vector2() },
    },
  });
  private readonly scene = new Scene().add(new Mesh(new PlaneGeometry(2, 2), this.material));
  private readonly camera = new OrthographicCamera();

  constructor(private readonly gl: WebGLRenderer) {}

  paint({ figure, area, sheet, width, height, repeats }: Painting): Painted {
    const { uniforms } = this.material;
    uniforms.look!.value = looks[figure.look];
    uniforms.colour!.value.set(figure.colour);
    uniforms.second!.value.set(figure.second);
    uniforms.size!.value = figure.size;
    uniforms.seed!.value = figure.seed + 977 * sheet;
    uniforms.area!.value.set(area.left, area.bottom, area.width, area.height);
    uniforms.sheet!.value.set(area.sheet.width, area.sheet.height);
    uniforms.texel!.value.set(area.width / width, area.height / height);
    const wrap = repeats ? RepeatWrapping : ClampToEdgeWrapping;
    const target = (wanted: number, colorSpace: typeof SRGBColorSpace | typeof NoColorSpace) => {
      const made = new WebGLRenderTarget(width, height, {
        colorSpace,
        depthBuffer: false,
        wrapS: wrap,
        wrapT: wrap,
        generateMipmaps: true,
        minFilter: LinearMipmapLinearFilter,
        magFilter: LinearFilter,
        anisotropy: Math.min(8, this.gl.capabilities.getMaxAnisotropy()),
      });
      uniforms.wanted!.value = wanted;
      this.gl.setRenderTarget(made);
      this.gl.render(this.scene, this.camera);
      return made;
    };
    const before = this.gl.getRenderTarget();
    const [colour, normal] = [target(0, SRGBColorSpace), target(1, NoColorSpace)];
    this.gl.setRenderTarget(before);
    return {
      colour: colour.texture,
      normal: normal.texture,
      dispose: () => {
        colour.dispose();
        normal.dispose();
      },
    };
  }
}
