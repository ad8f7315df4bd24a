// Deviation as colour, contour lines of constant width on the screen, and a hatch over what is assumed or known no
// better than a step. Colours leave as they stand in the scale, so that they can be read back.
uniform sampler2D scale;
uniform float range; // mm at either end of the scale
uniform float interval; // mm from contour to contour
uniform float assumed; // 1 where a prior alone shapes the wall
uniform float pixels; // device pixels in a CSS pixel
uniform vec3 ink;
uniform vec3 paper;
varying float off;
varying float doubt;
varying vec2 place;

const float HATCH = 34.0; // mm between stripes
const float FADED = 0.62;

float perPixel(float value) {
  return length(vec2(dFdx(value), dFdy(value)));
}

float contour(float steps) {
  float slope = perPixel(steps);
  float nearest = round(steps);
  float apart = abs(steps - nearest) / max(slope, 1e-7);
  float thick = (nearest == 0.0 ? 1.25 : 0.65) * pixels;
  float line = 1.0 - smoothstep(thick - 0.5, thick + 0.5, apart);
  // nothing to draw on a wall that is flat to the eye, nor where lines would run together
  return line * smoothstep(5e-5, 2e-4, slope) * (1.0 - smoothstep(0.2, 0.4, slope));
}

void main() {
  float share = clamp(off / range, -1.0, 1.0) * 0.5 + 0.5;
  float texels = float(textureSize(scale, 0).x);
  vec3 colour = texture2D(scale, vec2((share * (texels - 1.0) + 0.5) / texels, 0.5)).rgb;

  float unsure = max(assumed, smoothstep(0.95, 1.05, doubt / interval));
  float along = (place.x + place.y) / HATCH;
  float soft = max(perPixel(along), 1e-4) * 1.5;
  float stripe = smoothstep(0.32 - soft, 0.32 + soft, abs(fract(along) - 0.5));
  colour = mix(colour, paper, unsure * FADED);
  colour = mix(colour, ink, unsure * (1.0 - stripe) * 0.16);

  colour = mix(colour, ink, contour(off / interval) * mix(0.8, 0.3, unsure));
  gl_FragColor = vec4(colour, 1.0);
}
