import {
  BackSide,
  BoxGeometry,
  Color,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  PMREMGenerator,
  Scene,
  type Texture,
  type WebGLRenderer,
} from 'three';

interface Panel {
  at: [number, number, number];
  size: [number, number];
  glow: number;
  tint: string;
}

/** Lamps around the room: a wide soft one above, a window to one side, a low one behind the viewer. Metres. */
const lamps: readonly Panel[] = [
  { at: [0, 2.4, 1.6], size: [3.0, 2.0], glow: 6, tint: '#fffdfa' },
  { at: [3.6, 0.6, 1.4], size: [1.6, 2.2], glow: 5.5, tint: '#fafcff' },
  { at: [-3.6, 0.6, 1.4], size: [1.2, 2.2], glow: 4.5, tint: '#fffcf8' },
  { at: [0.3, 0.5, 4.6], size: [3.2, 1.8], glow: 2.6, tint: '#ffffff' },
];

/** What the room throws back on everything: a plain painted room with soft lamps, drawn once into a light map. */
export function studioLight(gl: WebGLRenderer): { texture: Texture; dispose(): void } {
  const scene = new Scene();
  const made: { dispose(): void }[] = [];
  const add = (geometry: BoxGeometry | PlaneGeometry, material: MeshBasicMaterial) => {
    const mesh = new Mesh(geometry, material);
    made.push(geometry, material);
    scene.add(mesh);
    return mesh;
  };
  add(
    new BoxGeometry(8, 5, 10),
    new MeshBasicMaterial({ color: new Color('#e6e5e2').multiplyScalar(0.8), side: BackSide }),
  );
  add(new PlaneGeometry(8, 10), new MeshBasicMaterial({ color: new Color('#b7b3ad').multiplyScalar(0.75) }))
    .rotateX(-Math.PI / 2)
    .position.set(0, -1.3, 0);
  for (const { at, size, glow, tint } of lamps) {
    const lamp = add(
      new PlaneGeometry(...size),
      new MeshBasicMaterial({ color: new Color(tint).multiplyScalar(glow) }),
    );
    lamp.position.set(...at);
    lamp.lookAt(0, 0, 0);
  }
  const generator = new PMREMGenerator(gl);
  const target = generator.fromScene(scene, 0.03);
  generator.dispose();
  for (const each of made) each.dispose();
  return { texture: target.texture, dispose: () => target.dispose() };
}
