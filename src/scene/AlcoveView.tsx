import { Canvas } from '@react-three/fiber';
import { useCallback, useMemo, useState } from 'react';
import type { Job, PanelName, Result } from '../core';
import { ControlLines } from './ControlLines';
import { colours } from './colours';
import { DrawingBoundary } from './DrawingBoundary';
import { alcoveShape, type CutStrip, exaggerated } from './geometry';
import { Lights } from './Lights';
import { LossWatch } from './LossWatch';
import { NoDrawing } from './NoDrawing';
import { PanelBody } from './PanelBody';
import { RimBody } from './RimBody';
import styles from './scene.module.css';
import { Viewer } from './Viewer';
import { Walls } from './Walls';
import { canDraw3d } from './webgl';

export interface AlcoveViewProps {
  result: Result;
  /** the job that `result` belongs to */
  job: Job;
  /** how many times further out of true the alcove is drawn than it is */
  factor: number;
  /** distance the panels are drawn off their walls, mm */
  off: number;
  showPanels: boolean;
  tags: boolean;
  picked: PanelName | null;
  onPick: (panel: PanelName) => void;
  /** a length in the person's unit, with its mark */
  lengthText: (mm: number) => string;
  /** one sentence that says what is drawn */
  description: string;
  /** no motion that goes on by itself */
  calm: boolean;
  /** counts up each time the first view is asked for again */
  reset: number;
}

const panelNames: readonly PanelName[] = ['back', 'left', 'right'];

/** The measured alcove in 3D with its panels. Where the browser cannot draw it, a sentence takes its place. */
export function AlcoveView(props: AlcoveViewProps) {
  const [drawable] = useState(canDraw3d);
  const [attempt, setAttempt] = useState(0);
  const [lost, setLost] = useState(false);
  const onLost = useCallback(() => setLost(true), []);
  const again = () => {
    setLost(false);
    setAttempt((count) => count + 1);
  };
  if (!drawable) {
    return (
      <NoDrawing sentence="This browser cannot draw in 3D (WebGL 2 is missing or switched off). Readings, figures and templates work as usual." />
    );
  }
  const stopped = (retry: () => void) => (
    <NoDrawing sentence="The 3D drawing stopped. Readings, figures and templates work as usual." again={retry} />
  );
  if (lost) return stopped(again);
  return (
    <DrawingBoundary instead={stopped}>
      <div className={styles.frame} role="img" aria-label={props.description}>
        <Canvas key={attempt} frameloop="demand" flat dpr={[1, 2]} camera={{ fov: 32 }}>
          <LossWatch onLost={onLost} />
          <Drawing {...props} />
        </Canvas>
      </div>
    </DrawingBoundary>
  );
}

function Drawing({
  result,
  job,
  factor,
  off,
  showPanels,
  tags,
  picked,
  onPick,
  lengthText,
  calm,
  reset,
}: AlcoveViewProps) {
  const shape = useMemo(() => alcoveShape(result), [result]);
  const place = useMemo(() => exaggerated(shape, factor), [shape, factor]);
  const tagText = ({ kind, edge, widest }: CutStrip) => `${kind} ${edge} ${lengthText(widest.width)}`;
  return (
    <>
      <color attach="background" args={[colours.room]} />
      <Lights />
      <Walls shape={shape} place={place} />
      <RimBody shape={shape} rim={job.rim} place={place} />
      <ControlLines shape={shape} place={place} tags={tags} />
      {showPanels &&
        panelNames.map((name) => (
          <PanelBody
            key={name}
            shape={shape}
            panel={result.panels[name]}
            bed={job.fit.bed}
            factor={factor}
            off={off}
            place={place}
            picked={picked === name}
            onPick={() => onPick(name)}
            tagText={tags && (picked === null || picked === name) ? tagText : null}
          />
        ))}
      <Viewer shape={shape} calm={calm} reset={reset} />
    </>
  );
}
