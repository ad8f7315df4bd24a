import { Canvas } from '@react-three/fiber';
import { useMemo, useRef } from 'react';
import type { Job, Result, WallName } from '../../core';
import { BuiltMesh } from '../BuiltMesh';
import { colours } from '../colours';
import { Drawable } from '../Drawable';
import { alcoveShape, boxOf, exaggerated, onWall, rimSolid } from '../geometry';
import { Lights } from '../Lights';
import { LossWatch } from '../LossWatch';
import { Polyline } from '../Polyline';
import frame from '../scene.module.css';
import { type Tag, TagLayer, TagProjector } from '../tags';
import { Viewer } from '../Viewer';
import { bedField } from './bed-field';
import type { LengthWords } from './drawn-heat';
import { HeatWallMesh } from './HeatWallMesh';
import styles from './heat.module.css';
import { heatMesh } from './heat-mesh';

const WALLS = ['back', 'left', 'right'] as const;

export interface BedViewProps {
  result: Result;
  job: Job;
  /** whose shims are numbered */
  panel: WallName;
  /** mm over the even bed at the end of the scale, and from contour to contour */
  range: number;
  interval: number;
  /** times further out of true than it is */
  factor: number;
  lengths: LengthWords;
  description: string;
  calm: boolean;
  reset: number;
}

/** The walls painted by how thick the bed over them is, with the thickest places and a panel's shims. */
export function BedView(props: BedViewProps) {
  return (
    <Drawable besides="The figures and the list of shims say the same.">
      {(onLost) => <BedDrawing {...props} onLost={onLost} />}
    </Drawable>
  );
}

function BedDrawing({
  result,
  job,
  panel,
  range,
  interval,
  factor,
  lengths,
  description,
  calm,
  reset,
  onLost,
}: BedViewProps & { onLost: () => void }) {
  const drawn = useMemo(() => {
    const shape = alcoveShape(result);
    const place = exaggerated(shape, factor);
    const walls = WALLS.map((name) => {
      const field = bedField(result, name, job.fit.bed);
      return { name, field, mesh: heatMesh(shape, name, field, place) };
    });
    return { shape, place, walls, rim: rimSolid(shape, job.rim, place), box: boxOf(shape, job) };
  }, [result, job, factor]);
  const tags = useMemo(() => {
    const { shape, place } = drawn;
    const tag = (wall: WallName, key: string, text: string, { u, v }: { u: number; v: number }): Tag => ({
      key: `${wall} ${key}`,
      kind: 'hole',
      text,
      at: place(onWall(shape, wall, 4)(u, v)),
    });
    const { thickest, shims } = result.bedding[panel];
    return [
      tag(panel, 'thickest', `bed ${lengths.fine(thickest.value)} ${lengths.plusMinus(thickest.sd)}`, thickest),
      ...shims.list.map((shim, k) =>
        tag(panel, `shim ${k + 1}`, `shim ${k + 1}: ${lengths.fine(shim.thickness)}`, shim),
      ),
    ];
  }, [drawn, result, panel, lengths]);
  const elements = useRef(new Map<string, HTMLElement>());
  return (
    <div className={styles.stage}>
      <div className={frame.frame} role="img" aria-label={description}>
        <Canvas frameloop="demand" flat dpr={[1, 2]} camera={{ fov: 32 }}>
          <color attach="background" args={[colours.room]} />
          <Lights />
          {drawn.walls.map((wall) => (
            <HeatWallMesh key={wall.name} wall={wall} range={range} interval={interval} />
          ))}
          <BuiltMesh data={drawn.rim.mesh}>
            <meshStandardMaterial color={colours.rim} roughness={0.35} />
          </BuiltMesh>
          {drawn.rim.edges.map((points, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: always the same edges in the same order
            <Polyline key={i} points={points} colour={colours.outline} width={1.25} />
          ))}
          <TagProjector tags={tags} elements={elements} />
          <Viewer box={drawn.box} calm={calm} reset={reset} />
          <LossWatch onLost={onLost} />
        </Canvas>
        <TagLayer tags={tags} elements={elements} />
      </div>
    </div>
  );
}
