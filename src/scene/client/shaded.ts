import type { Material, WebGLProgramParametersWithUniforms } from 'three';
import { Vector3, Vector4 } from 'three';
import shade from '../../../shaders/shade.glsl?raw';
import type { Room } from './geometry';

/** Values of `shade.glsl`, shared by every material of a scene. */
export interface ShadeUniforms {
  alcoveBox: { value: Vector4 };
  alcoveFloor: { value: Vector3 };
}

export const shadeUniforms = (room: Room, rim: number, apron: number): ShadeUniforms => ({
  alcoveBox: { value: new Vector4(room.left, room.right, rim, room.front) },
  alcoveFloor: { value: new Vector3(room.floor, room.ceiling, apron) },
});

/** What a material takes as `onBeforeCompile` to lose light near corners, rim and floor. */
export const shaded =
  (uniforms: ShadeUniforms): Material['onBeforeCompile'] =>
  (program: WebGLProgramParametersWithUniforms) => {
    Object.assign(program.uniforms, uniforms);
    program.vertexShader = program.vertexShader
      .replace('#include <common>', '#include <common>\nvarying vec3 alcovePlace;')
      .replace(
        '#include <project_vertex>',
        '#include <project_vertex>\nalcovePlace = (modelMatrix * vec4(transformed, 1.0)).xyz;',
      );
    program.fragmentShader = program.fragmentShader
      .replace('#include <common>', `#include <common>\nvarying vec3 alcovePlace;\n${shade}`)
      .replace(
        '#include <aomap_fragment>',
        `float lit = shadeAt(alcovePlace, inverseTransformDirection(normalize(vNormal), viewMatrix));
        reflectedLight.indirectDiffuse *= lit;
        reflectedLight.indirectSpecular *= mix(0.35, 1.0, lit);
        reflectedLight.directDiffuse *= mix(0.6, 1.0, lit);`,
      );
  };
