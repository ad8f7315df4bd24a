varying vec3 place;

void main() {
  place = position;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
