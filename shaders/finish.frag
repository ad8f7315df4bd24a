precision highp float;

// A finish over a stretch of a flat sheet, mm: its colour (linear), or its normal.
uniform int look; // 0 plain, 1 stone, 2 ribbed, 3 large format
uniform int wanted; // 0 colour, 1 normal
uniform vec3 colour;
uniform vec3 second;
uniform float size;
uniform float seed;
uniform vec4 area; // left, bottom, width, height from the sheet's lower left corner
uniform vec2 sheet; // width, height
uniform vec2 texel; // mm
in vec2 at;
out vec4 painted;

float hash(vec2 p) {
  vec3 q = fract(vec3(p.xyx) * vec3(0.1031, 0.103, 0.0973) + fract(seed * 0.61803));
  q += dot(q, q.yzx + 33.33);
  return fract((q.x + q.y) * q.z);
}

float noise(vec2 p) {
  vec2 i = floor(p);
  vec2 f = fract(p);
  f = f * f * f * (f * (f * 6.0 - 15.0) + 10.0);
  return mix(mix(hash(i), hash(i + vec2(1, 0)), f.x), mix(hash(i + vec2(0, 1)), hash(i + vec2(1, 1)), f.x), f.y);
}

// Octaves of noise, each turned against the one before so that no grid shows; about 0 to 1.
float cloud(vec2 p) {
  float sum = 0.0;
  float weight = 0.5;
  for (int octave = 0; octave < 5; octave++) {
    sum += weight * noise(p);
    p = mat2(0.8, -0.6, 0.6, 0.8) * p * 2.03 + 17.7;
    weight *= 0.5;
  }
  return sum;
}

// A vein where a warped cloud crosses its middle: sharp on the line, fading to both sides.
float vein(vec2 p, float thin) {
  vec2 warp = vec2(cloud(p * 0.9 + 3.1), cloud(p * 0.9 + 41.7)) - 0.5;
  float ridge = abs(cloud(p + 2.2 * warp) - 0.5);
  return exp(-ridge * thin);
}

vec3 stone(vec2 p) {
  vec2 q = p / size;
  float drift = cloud(q * 1.3 + 9.0);
  vec2 slanted = mat2(0.86, 0.5, -0.5, 0.86) * q * vec2(0.75, 1.5);
  float bold = vein(slanted, 46.0) * smoothstep(0.32, 0.62, cloud(q * 0.8 + 70.0));
  float fine = vein(slanted * 2.7 + 13.0, 70.0) * 0.5 * smoothstep(0.4, 0.7, cloud(q * 1.7 + 5.0));
  float grain = noise(p * 0.9) * 0.5 + noise(p * 0.37) * 0.5 - 0.5;
  vec3 ground = mix(colour, mix(colour, second, 0.3), smoothstep(0.35, 0.75, drift));
  ground = mix(ground, second, clamp(0.62 * bold + 0.5 * fine, 0.0, 0.85));
  return ground * (1.0 + 0.022 * grain);
}

// Fields centred on the sheet from side to side, and from its top down: twice as wide as they are high.
vec2 field(vec2 p) {
  return vec2((p.x - 0.5 * sheet.x) / size + 0.5, (sheet.y - p.y) / (0.5 * size));
}

const float JOINT = 1.6; // half its width, mm

float toJoint(vec2 p) {
  vec2 f = fract(field(p));
  return min(min(f.x, 1.0 - f.x) * size, min(f.y, 1.0 - f.y) * 0.5 * size);
}

// A face of a large-format field, without its joints.
vec3 fieldFace(vec2 p) {
  vec2 cell = floor(field(p));
  float shade = hash(cell + 0.5) - 0.5;
  float drift = cloud(p / (0.6 * size) + 31.0 * cell) - 0.5;
  return colour * (1.0 + 0.05 * shade + 0.09 * drift + 0.015 * (noise(p * 0.8) - 0.5));
}

// Height of half-round ribs from their groove, as a share of their radius.
float rib(float x) {
  float t = 2.0 * fract(x / size) - 1.0;
  return sqrt(max(0.0, 1.0 - t * t));
}

float heightOf(vec2 p) {
  if (look == 2) return 0.34 * size * rib(p.x);
  if (look == 3) return -1.1 * (1.0 - smoothstep(JOINT - 0.6, JOINT + 1.4, toJoint(p)));
  if (look == 1) return 0.05 * cloud(p * 0.02);
  return 0.02 * noise(p * 0.12);
}

// What is coarse, and so taken once a texel.
vec3 groundOf(vec2 p) {
  if (look == 1) return stone(p);
  if (look == 2) return colour * (1.0 + 0.03 * (cloud(vec2(p.x, p.y * 0.06) * 0.3) - 0.5));
  if (look == 3) return fieldFace(p);
  return colour * (1.0 + 0.012 * (cloud(p * 0.01) - 0.5));
}

// How much of the ground is seen, and how much of the second colour: finer than a texel.
float groundShare(vec2 p) {
  if (look == 2) return 0.25 + 0.75 * smoothstep(0.0, 0.75, rib(p.x));
  return smoothstep(JOINT, JOINT + 0.8, toJoint(p));
}

void main() {
  vec2 p = area.xy + at * area.zw;
  if (wanted == 1) {
    vec2 step = max(texel, vec2(0.5));
    vec2 slope = vec2(
      heightOf(p + vec2(step.x, 0.0)) - heightOf(p - vec2(step.x, 0.0)),
      heightOf(p + vec2(0.0, step.y)) - heightOf(p - vec2(0.0, step.y))
    ) / (2.0 * step);
    painted = vec4(0.5 + 0.5 * normalize(vec3(-slope, 1.0)), 1.0);
    return;
  }
  vec3 ground = groundOf(p);
  if (look < 2) {
    painted = vec4(ground, 1.0);
    return;
  }
  float seen = 0.0;
  for (int i = 0; i < 2; i++) {
    for (int j = 0; j < 2; j++) seen += 0.25 * groundShare(p + texel * (vec2(i, j) - 0.5) * 0.5);
  }
  painted = vec4(mix(second, ground, seen), 1.0);
}
