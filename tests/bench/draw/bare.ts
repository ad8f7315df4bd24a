import {
  AmbientLight,
  BoxGeometry,
  DirectionalLight,
  Mesh,
  MeshStandardMaterial,
  PerspectiveCamera,
  Scene,
  WebGLRenderer,
} from 'three';

/** The least that three.js can show: one lit box over the whole page. */
const renderer = new WebGLRenderer({ antialias: true });
renderer.setSize(window.innerWidth, window.innerHeight);
document.body.append(renderer.domElement);
const camera = new PerspectiveCamera(36, window.innerWidth / window.innerHeight, 0.1, 100);
camera.position.set(2, 2, 4);
camera.lookAt(0, 0, 0);
const box = new Mesh(new BoxGeometry(), new MeshStandardMaterial({ color: '#c9ccc4' }));
renderer.render(new Scene().add(box, new AmbientLight(), new DirectionalLight()), camera);
