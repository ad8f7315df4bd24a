import { type ReactNode, useMemo } from 'react';
import type { DryFit, Job, Result } from '../core';
import { AlcoveStage } from './AlcoveStage';
import { BuiltMesh } from './BuiltMesh';
import { ControlLines } from './ControlLines';
import { colours } from './colours';
import { Drawable } from './Drawable';
import { drawnAlcove, type Layer, tracedLine, type WallPlace } from './geometry';
import { PanelBody } from './PanelBody';
import { PieceBody } from './PieceBody';
import { Polyline } from './Polyline';
import { fitTags, tagsOf } from './tags';

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
  /** a flat picture that stands in for the drawing */
  instead?: ReactNode;
}

/** The measured alcove in 3D with its panels. Where the browser cannot draw it, a sentence and a flat picture take its place. */
export function AlcoveView(props: AlcoveViewProps) {
  return (
    <Drawable besides="Readings, figures and templates work as usual." instead={props.instead}>
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
  return (
    <AlcoveStage rim={drawn.rim} box={drawn.box} {...{ tags, description, calm, reset, onLost }}>
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
    </AlcoveStage>
  );
}
