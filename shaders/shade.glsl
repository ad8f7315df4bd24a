// How much of the room's even light reaches a place near the alcove's inside corners, rim and floor: what stands beside
// a face takes light from it, less with distance. Places and lengths in mm, in the alcove's frame.
uniform vec4 alcoveBox; // left, right, rim, front
uniform vec3 alcoveFloor; // floor, ceiling, apron

float beside(float distance, float facing, float reach, float most) {
  return 1.0 - most * (1.0 - facing * facing) * exp(-max(distance, 0.0) / reach);
}

float shadeAt(vec3 p, vec3 n) {
  float within = smoothstep(-90.0, 0.0, p.x - alcoveBox.x) * smoothstep(-90.0, 0.0, alcoveBox.y - p.x);
  float inside = (1.0 - smoothstep(-50.0, -4.0, p.z - alcoveBox.w)) * within;
  float lit = 1.0;
  lit *= mix(1.0, beside(p.x - alcoveBox.x, n.x, 150.0, 0.36), inside);
  lit *= mix(1.0, beside(alcoveBox.y - p.x, n.x, 150.0, 0.36), inside);
  lit *= mix(1.0, beside(p.z, n.z, 150.0, 0.36), inside);
  lit *= mix(1.0, beside(p.y - alcoveBox.z, n.y, 110.0, 0.3), inside * step(alcoveBox.z - 30.0, p.y));
  lit *= beside(p.y - alcoveFloor.x, n.y, 130.0, 0.5);
  lit *= beside(alcoveFloor.y - p.y, n.y, 220.0, 0.3);
  float before = p.z - alcoveFloor.z;
  lit *= 1.0 - 0.5 * within * max(n.y, 0.0) * step(0.0, before) * exp(-before / 140.0) * step(p.y, alcoveFloor.x + 20.0);
  return lit * mix(1.0, 0.88 + 0.12 * clamp(p.z / alcoveBox.w, 0.0, 1.0), inside);
}
