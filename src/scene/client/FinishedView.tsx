import { Canvas, useThree } from '@react-three/fiber';
import { type ReactNode, useCallback, useMemo, useRef } from 'react';
import { type Group, NeutralToneMapping } from 'three';
import type { Job, Result } from '../../core';
import { Drawable } from '../Drawable';
import { type AlcoveShape, alcoveShape } from '../geometry';
import { LossWatch } from '../LossWatch';
import sceneStyles from '../scene.module.css';
import { TagLayer, TagProjector } from '../tags';
import { Dimensions } from './Dimensions';
import { viewSize } from './draw-views';
import { Finished } from './Finished';
import { type FigureWords, figuresOf } from './figures';
import { roomAround } from './geometry';
import { Leans } from './Leans';
import { bareLayers, type Layers } from './layers';
import { Names } from './Names';
import { StageLight } from './StageLight';
import { Surroundings } from './Surroundings';
import { shadeUniforms } from './shaded';
import { type Photographer, Views } from './Views';
import { standAt, type Viewpoint } from './viewpoint';
import { Walk } from './Walk';

/** One way that the alcove looks, under a name of its own. */
export interface Side {
  name: string;
  job: Job;
  result: Result;
  /** the alcove before anything is done */
  bare: boolean;
}

export interface FinishedViewProps {
  /** one to four of one alcove; the first one's walls are drawn for all */
  sides: readonly Side[];
  layers: Layers;
  /** share of the width where the first of two sides ends; null: each in a part of its own */
  wipe: number | null;
  viewpoint: Viewpoint;
  /** height of the person through whose eyes it is seen, mm */
  person: number;
  /** counts up each time the viewpoint is asked for again */
  reset: number;
  calm: boolean;
  /** how lengths are told where figures are to be shown: dimensions of what is finished, how far bare walls lean */
  figures: FigureWords | null;
  description: string;
  onPhotographer: (photographer: Photographer | null) => void;
  /** a flat picture that stands in for the drawing */
  instead?: ReactNode;
}

/** The finished alcove as it will look. Where the browser cannot draw it, a sentence and a flat picture take its place. */
export function FinishedView(props: FinishedViewProps) {
  return (
    <Drawable besides="Lists and prices work as usual." instead={props.instead}>
      {(onLost) => <Drawing {...props} onLost={onLost} />}
    </Drawable>
  );
}

function Drawing(props: FinishedViewProps & { onLost: () => void }) {
  const elements = useRef(new Map<string, HTMLElement>());
  const { sides, figures } = props;
  const side = sides[0]!;
  const shape = useMemo(() => alcoveShape(side.result), [side.result]);
  const { dimensions, leans, tags } = useMemo(() => figuresOf(shape, side, figures), [shape, side, figures]);
  return (
    <div className={sceneStyles.frame} role="img" aria-label={props.description}>
      <Canvas
        frameloop="demand"
        shadows="percentage"
        dpr={sides.length > 1 ? [1, 2] : [1.5, 2]}
        gl={{ toneMapping: NeutralToneMapping, toneMappingExposure: 1.05 }}
        camera={{ fov: 36 }}
      >
        <Stage {...props} shape={shape} />
        <Dimensions dimensions={dimensions} />
        <Leans leans={leans} />
        <TagProjector tags={tags} elements={elements} />
      </Canvas>
      <Names names={sides.map(({ name }) => name)} wiped={props.wipe !== null} />
      <TagLayer tags={tags} elements={elements} />
    </div>
  );
}

const wetSide = ({ fit: { wetWall } }: Job): -1 | 0 | 1 => (wetWall === 'left' ? -1 : wetWall === 'right' ? 1 : 0);

function Stage({
  sides,
  layers,
  wipe,
  viewpoint,
  person,
  reset,
  calm,
  onPhotographer,
  onLost,
  shape,
}: FinishedViewProps & { shape: AlcoveShape; onLost: () => void }) {
  const size = useThree((state) => state.size);
  const groups = useRef<(Group | null)[]>([]);
  const { job } = sides[0]!;
  const { levelAboveFloor, fit } = job;
  const room = useMemo(() => roomAround(shape, levelAboveFloor, fit.top), [shape, levelAboveFloor, fit.top]);
  const shade = useMemo(() => shadeUniforms(room, shape.nominal.rim, job.rim.width), [room, shape, job.rim.width]);
  const view = viewSize(sides.length, wipe, size.width, size.height);
  const aspect = view.width / view.height;
  const standFrom = useCallback(
    (from: Viewpoint) =>
      standAt(from, { room, rim: shape.nominal.rim, top: job.fit.top, height: person, aspect, wet: wetSide(job) }),
    [room, shape, person, aspect, job],
  );
  const stand = useMemo(() => standFrom(viewpoint), [standFrom, viewpoint]);
  return (
    <>
      <color attach="background" args={['#d6d0c5']} />
      <StageLight room={room} />
      <Surroundings {...{ shape, room, job, shade }} />
      {sides.map((side, i) => (
        <group
          // biome-ignore lint/suspicious/noArrayIndexKey: two sides may have one name
          key={i}
          ref={(group) => {
            groups.current[i] = group;
          }}
        >
          <Finished
            {...{ shape, shade }}
            result={side.result}
            job={side.job}
            layers={side.bare ? bareLayers : layers}
            detail={sides.length > 2 ? 0.6 : 1}
          />
        </group>
      ))}
      <Walk stand={stand} calm={calm} reset={reset} />
      <Views groups={groups} count={sides.length} wipe={wipe} standAt={standFrom} onPhotographer={onPhotographer} />
      <LossWatch onLost={onLost} />
    </>
  );
}
