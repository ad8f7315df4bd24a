import { Mesh, PerspectiveCamera, Raycaster, Scene, type ShaderMaterial, Vector2, Vector3, WebGLRenderer } from 'three';
import { heatGeometry } from '../../../src/scene/heat/heat-geometry';
import { heatMaterial, setHeatLook } from '../../../src/scene/heat/heat-material';
import type { HeatMesh } from '../../../src/scene/heat/heat-mesh';

/** A pixel of the drawing: which wall it shows, where, and its colour. */
export interface Seen {
  wall: number;
  at: number;
  height: number;
  colour: [number, number, number];
}

export interface Look {
  range: number;
  interval: number;
  assumed: boolean;
  /** how far in front of the back wall the camera stands, mm */
  distance: number;
}

const size = { width: 1200, height: 900 };

/** Draws heat meshes with the app's own geometry and shaders, and reads pixels back. */
function stage(meshes: HeatMesh[]) {
  const renderer = new WebGLRenderer({ antialias: false });
  renderer.setSize(size.width, size.height, false);
  const scene = new Scene();
  const walls = meshes.map((mesh) => new Mesh(heatGeometry(mesh), heatMaterial()));
  scene.add(...walls);
  const camera = new PerspectiveCamera(40, size.width / size.height, 10, 20_000);

  function draw({ distance, ...look }: Look): Uint8Array {
    camera.position.set(0, 100, distance);
    camera.lookAt(0, 100, 0);
    camera.updateMatrixWorld();
    for (const { material } of walls) setHeatLook(material as ShaderMaterial, { ...look, pixels: 1 });
    renderer.render(scene, camera);
    const bytes = new Uint8Array(4 * size.width * size.height);
    const gl = renderer.getContext();
    gl.readPixels(0, 0, size.width, size.height, gl.RGBA, gl.UNSIGNED_BYTE, bytes);
    return bytes;
  }

  /** Pixels `every` apart over the whole picture, or each of one column. */
  function read(look: Look, every: number, column: number | null = null): Seen[] {
    const bytes = draw(look);
    const caster = new Raycaster();
    const seen: Seen[] = [];
    const columns = column === null ? size.width : column + 1;
    for (let x = column ?? every; x < columns; x += every) {
      for (let y = every; y < size.height; y += every) {
        const on = new Vector2((2 * (x + 0.5)) / size.width - 1, (2 * (y + 0.5)) / size.height - 1);
        caster.setFromCamera(on, camera);
        const hit = caster.intersectObjects(walls)[0];
        if (!hit?.barycoord || !hit.face) continue;
        const wall = walls.indexOf(hit.object as (typeof walls)[number]);
        const spots = walls[wall]!.geometry.getAttribute('spot');
        const { a, b, c } = hit.face;
        const spot = new Vector3();
        [a, b, c].forEach((vertex, i) => {
          const share = hit.barycoord!.getComponent(i);
          spot.x += share * spots.getX(vertex);
          spot.y += share * spots.getY(vertex);
        });
        const at = 4 * (y * size.width + x);
        seen.push({ wall, at: spot.x, height: spot.y, colour: [bytes[at]!, bytes[at + 1]!, bytes[at + 2]!] });
      }
    }
    return seen;
  }
  return { read };
}

declare global {
  interface Window {
    heatStage: typeof stage;
  }
}
window.heatStage = stage;
