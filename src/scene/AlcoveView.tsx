import { Canvas } from '@react-three/fiber';
import { useMemo, useRef } from 'react';
import type { DryFit, Job, Result } from '../core';
import { BuiltMesh } from './BuiltMesh';
import { ControlLines } from './ControlLines';
import { colours } from './colours';
import { Drawable } from './Drawable';
import { drawnAlcove, type Layer, tracedLine, type WallPlace } from './geometry';
import { Lights } from './Lights';
import { LossWatch } from './LossWatch';
import { PanelBody } from './PanelBody';
import { PieceBody } from './PieceBody';
import { Polyline } from './Polyline';
import styles from './scene.module.css';
import { fitTags, TagLayer, TagProjector, tagsOf } from './tags';
import { Viewer } from './Viewer';

export interface AlcoveViewProps {
  result: Result;
  /** the job that `result` belongs to */
  job: Job;
  /** how many times further out of true the alcove is drawn than it is */
  factor: number;
  /** distance the panels are drawn off their walls, mm */
  off: number;
  /** what is shown and what is left out */
  layers: Record<Layer, boolean>;
  tags: boolean;
  /** a line from place to place on the walls that is shown up */
  traced: readonly WallPlace[] | null;
  /** a panel by its name, or a piece by its id */
  picked: string | null;
  onPick: (item: string) => void;
  /** what came of the virtual dry fit of this result; null before it was tried */
  dryFit: DryFit | null;
  /** a length in the person's unit, with its mark */
  lengthText: (mm: number) => string;
  /** one sentence that says what is drawn */
  description: string;
  /** no motion that goes on by itself */
  calm: boolean;
  /** counts up each time the first view is asked for again */
  reset: number;
}

/** The measured alcove in 3D with its panels. Where the browser cannot draw it, a sentence takes its place. */
export function AlcoveView(props: AlcoveViewProps) {
  return (
    <Drawable besides="Readings, figures and templates work as usual.">
      {(onLost) => <Drawing {...props} onLost={onLost} />}
    </Drawable>
  );
}

function Drawing({
  result,
  job,
  factor,
  off,
  layers,
  tags: tagged,
  traced,
  picked,
  onPick,
  dryFit,
  lengthText,
  description,
  calm,
  reset,
  onLost,
}: AlcoveViewProps & { onLost: () => void }) {
  const drawn = useMemo(() => drawnAlcove(result, job, factor, off), [result, job, factor, off]);
  const tags = useMemo(
    () => (tagged ? [...fitTags(dryFit, picked, drawn.place), ...tagsOf(drawn, picked, layers, lengthText)] : []),
    [drawn, tagged, picked, layers, lengthText, dryFit],
  );
  const trace = useMemo(() => traced && tracedLine(result, traced, factor), [result, traced, factor]);
  const piecePicked = drawn.pieces.some(({ id }) => id === picked);
  const elements = useRef(new Map<string, HTMLElement>());
  return (
    <div className={styles.frame} role="img" aria-label={description}>
      <Canvas frameloop="demand" flat dpr={[1, 2]} camera={{ fov: 32 }}>
        <color attach="background" args={[colours.room]} />
        <Lights />
        {layers.walls &&
          drawn.walls.map((wall, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: always the same three walls in the same order
            <BuiltMesh key={i} data={wall}>
              <meshStandardMaterial
                color={colours.wall}
                roughness={0.95}
                polygonOffset
                polygonOffsetFactor={2}
                polygonOffsetUnits={2}
              />
            </BuiltMesh>
          ))}
        <BuiltMesh data={drawn.rim.mesh}>
          <meshStandardMaterial color={colours.rim} roughness={0.35} />
        </BuiltMesh>
        {drawn.rim.edges.map((points, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: always the same edges in the same order
          <Polyline key={i} points={points} colour={colours.outline} width={1.25} />
        ))}
        <ControlLines lines={drawn.lines} />
        {trace && <Polyline points={trace} colour={colours.traced} width={6} throughWalls />}
        {layers.panels &&
          drawn.panels.map((panel) => (
            <PanelBody
              key={panel.name}
              panel={panel}
              picked={picked === panel.name}
              stripsShown={layers.slivers && !piecePicked}
              onPick={() => onPick(panel.name)}
            />
          ))}
        {drawn.pieces
          .filter(({ layer }) => layers[layer])
          .map((piece) => (
            <PieceBody key={piece.id} piece={piece} picked={picked === piece.id} onPick={() => onPick(piece.id)} />
          ))}
        <TagProjector tags={tags} elements={elements} />
        <Viewer box={drawn.box} calm={calm} reset={reset} />
        <LossWatch onLost={onLost} />
      </Canvas>
      <TagLayer tags={tags} elements={elements} />
    </div>
  );
}
