// A wall's deviation and its ± as they vary over it, mm.
attribute float deviation;
attribute float halfWidth;
attribute vec2 spot; // along and up the wall, mm
varying float off;
varying float doubt;
varying vec2 place;

void main() {
  off = deviation;
  doubt = halfWidth;
  place = spot;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
