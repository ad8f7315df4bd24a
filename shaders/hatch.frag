// Stripes across a strip: one slant for what is cut off, both slants (a lattice) for what is missing,
// so that the two are told apart without their colours.
uniform vec3 colour;
uniform vec3 stripe;
uniform float spacing; // mm
uniform bool lattice;
varying vec3 place;

float line(float along) {
  float phase = abs(fract(along / spacing) - 0.5) * 2.0;
  float soft = fwidth(along / spacing) * 2.0;
  return smoothstep(0.72 - soft, 0.72 + soft, phase);
}

void main() {
  float across = place.x + place.z;
  float ink = line(across + place.y);
  if (lattice) ink = max(ink, line(across - place.y));
  gl_FragColor = vec4(mix(colour, stripe, ink), 1.0);
  #include <colorspace_fragment>
}
