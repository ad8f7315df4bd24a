import { useMemo } from 'react';
import { Color, DoubleSide } from 'three';
import fragment from '../../shaders/hatch.frag?raw';
import vertex from '../../shaders/hatch.vert?raw';
import { BuiltMesh } from './BuiltMesh';
import { colours } from './colours';
import type { CutStrip } from './geometry';

const uniformsOf = (kind: CutStrip['kind']) => ({
  colour: { value: new Color(kind === 'gap' ? colours.gap : colours.sliver) },
  stripe: { value: new Color(kind === 'gap' ? colours.gapStripe : colours.sliverStripe) },
  spacing: { value: kind === 'gap' ? 22 : 34 },
  lattice: { value: kind === 'gap' },
});

/** What is cut off and what is missing along the edges of a panel, showing through the walls behind which it lies. */
export function CutStrips({ strips }: { strips: readonly CutStrip[] }) {
  const uniforms = useMemo(() => ({ sliver: uniformsOf('sliver'), gap: uniformsOf('gap') }), []);
  return strips.map(({ edge, kind, mesh }) => (
    <BuiltMesh key={`${edge} ${kind}`} data={mesh} renderOrder={2} raycast={() => null}>
      <shaderMaterial
        vertexShader={vertex}
        fragmentShader={fragment}
        uniforms={uniforms[kind]}
        depthTest={false}
        side={DoubleSide}
      />
    </BuiltMesh>
  ));
}
