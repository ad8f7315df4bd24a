import { Canvas } from '@react-three/fiber';
import { type ReactNode, useRef } from 'react';
import { BuiltMesh } from './BuiltMesh';
import { colours } from './colours';
import type { Box, RimSolid, Vec3 } from './geometry';
import { Lights } from './Lights';
import { LossWatch } from './LossWatch';
import { Polyline } from './Polyline';
import styles from './scene.module.css';
import { type Tag, type TagBox, TagLayer, TagProjector } from './tags';
import { Viewer } from './Viewer';

const untagged: readonly Tag[] = [];

export interface AlcoveStageProps {
  rim: RimSolid;
  box: Box;
  tags?: readonly Tag[];
  /** what the children put over the drawing, and tags leave free */
  inTheWay?: () => readonly TagBox[];
  /** one sentence that says what is drawn */
  description: string;
  /** no motion that goes on by itself */
  calm: boolean;
  /** counts up each time the first view is asked for again */
  reset: number;
  /** direction of the first view, from the alcove's middle */
  from?: Vec3;
  onLost: () => void;
  children: ReactNode;
}

/** What every drawing of the measured alcove has: light, rim, a way to look around, and names over it. */
export function AlcoveStage({
  rim,
  box,
  tags = untagged,
  inTheWay,
  description,
  calm,
  reset,
  from,
  onLost,
  children,
}: AlcoveStageProps) {
  const elements = useRef(new Map<string, HTMLElement>());
  return (
    <div className={styles.frame} role="img" aria-label={description}>
      <Canvas frameloop="demand" flat dpr={[1, 2]} camera={{ fov: 32 }}>
        <color attach="background" args={[colours.room]} />
        <Lights />
        <BuiltMesh data={rim.mesh}>
          <meshStandardMaterial color={colours.rim} roughness={0.35} />
        </BuiltMesh>
        {rim.edges.map((points, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: always the same edges in the same order
          <Polyline key={i} points={points} colour={colours.outline} width={1.25} />
        ))}
        {children}
        <TagProjector {...{ tags, elements, inTheWay }} />
        <Viewer box={box} calm={calm} reset={reset} from={from} />
        <LossWatch onLost={onLost} />
      </Canvas>
      <TagLayer tags={tags} elements={elements} />
    </div>
  );
}
