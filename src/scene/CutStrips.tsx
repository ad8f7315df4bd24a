import { useMemo } from 'react';
import { Color } from 'three';
import fragment from '../../shaders/hatch.frag?raw';
import vertex from '../../shaders/hatch.vert?raw';
import { BuiltMesh } from './BuiltMesh';
import { colours } from './colours';
import type { CutStrip } from './geometry';
import { Tag } from './Tag';

const uniformsOf = (kind: CutStrip['kind']) => ({
  colour: { value: new Color(kind === 'gap' ? colours.gap : colours.sliver) },
  stripe: { value: new Color(kind === 'gap' ? colours.gapStripe : colours.sliverStripe) },
  spacing: { value: kind === 'gap' ? 22 : 34 },
  lattice: { value: kind === 'gap' },
});

interface CutStripsProps {
  strips: readonly CutStrip[];
  tagText: ((strip: CutStrip) => string) | null;
}

/** What is cut off and what is missing along the edges of a panel, showing through the walls behind which it lies. */
export function CutStrips({ strips, tagText }: CutStripsProps) {
  const uniforms = useMemo(() => ({ sliver: uniformsOf('sliver'), gap: uniformsOf('gap') }), []);
  return strips.map((strip) => (
    <group key={`${strip.edge} ${strip.kind}`}>
      <BuiltMesh data={strip.mesh} renderOrder={2} raycast={() => null}>
        <shaderMaterial
          vertexShader={vertex}
          fragmentShader={fragment}
          uniforms={uniforms[strip.kind]}
          depthTest={false}
          side={2}
        />
      </BuiltMesh>
      {tagText && (
        <Tag at={strip.widest.at} kind={strip.kind}>
          {tagText(strip)}
        </Tag>
      )}
    </group>
  ));
}
