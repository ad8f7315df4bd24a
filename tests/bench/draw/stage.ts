import {
  AmbientLight,
  BufferGeometry,
  DirectionalLight,
  Float32BufferAttribute,
  type Material,
  Mesh,
  MeshBasicMaterial,
  MeshStandardMaterial,
  PerspectiveCamera,
  Scene,
  type ShaderMaterial,
  WebGLRenderer,
} from 'three';
import { heatGeometry } from '../../../src/scene/heat/heat-geometry';
import { heatMaterial, setHeatLook } from '../../../src/scene/heat/heat-material';
import type { HeatMesh } from '../../../src/scene/heat/heat-mesh';

export interface DrawTimes {
  heat: number[];
  lit: number[];
  unlit: number[];
}

/** Frame times in ms of the walls painted, and of the same triangles bare: lit, and in one colour. They take turns. */
function stage(meshes: HeatMesh[], rounds: number): DrawTimes {
  const renderer = new WebGLRenderer({ antialias: true });
  renderer.setSize(1024, 768, false);
  const camera = new PerspectiveCamera(32, 4 / 3, 10, 30_000);
  camera.position.set(1500, 1200, 4000);
  camera.lookAt(0, 100, 300);
  const bare = (material: Material) =>
    meshes.map(({ positions, indices }) => {
      const geometry = new BufferGeometry().setAttribute('position', new Float32BufferAttribute(positions, 3));
      geometry.setIndex(indices);
      geometry.computeVertexNormals();
      return new Mesh(geometry, material);
    });
  const painted = meshes.map((mesh) => {
    const material: ShaderMaterial = heatMaterial();
    setHeatLook(material, { range: 20, interval: 3.175, assumed: false, pixels: 1 });
    return new Mesh(heatGeometry(mesh), material);
  });
  const scenes = {
    heat: new Scene().add(...painted),
    lit: new Scene().add(...bare(new MeshStandardMaterial()), new AmbientLight(), new DirectionalLight()),
    unlit: new Scene().add(...bare(new MeshBasicMaterial())),
  };
  const gl = renderer.getContext();
  const pixel = new Uint8Array(4);
  const frame = (scene: Scene): number => {
    const began = performance.now();
    renderer.render(scene, camera);
    gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel);
    return performance.now() - began;
  };
  const times: DrawTimes = { heat: [], lit: [], unlit: [] };
  const names = ['heat', 'lit', 'unlit'] as const;
  for (const name of names) for (let i = 0; i < 5; i++) frame(scenes[name]);
  for (let round = 0; round < rounds; round++) for (const name of names) times[name].push(frame(scenes[name]));
  return times;
}

declare global {
  interface Window {
    drawStage: typeof stage;
  }
}
window.drawStage = stage;
