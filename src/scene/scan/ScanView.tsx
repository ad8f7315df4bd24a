import { OrbitControls } from '@react-three/drei';
import { Canvas } from '@react-three/fiber';
import { useMemo, useRef, useState } from 'react';
import { BufferAttribute } from 'three';
import { LABEL, LABEL_NAMES, type LabelName } from '../../core';
import { colours } from '../colours';
import { Drawable } from '../Drawable';
import { LossWatch } from '../LossWatch';
import frame from '../scene.module.css';
import { type Tag, TagLayer, TagProjector } from '../tags';
import { LassoSheet } from './LassoSheet';
import type { Projection, ScreenPoint } from './lasso';
import { ProjectionReader, type ReadProjection } from './ProjectionReader';
import { partColours } from './part-looks';
import { ScanCamera } from './ScanCamera';
import { ScanPoints } from './ScanPoints';
import { byLabel, shownPoints } from './shown-points';

export interface ScanViewProps {
  /** x y z of each point, mm, y up */
  points: Float32Array;
  /** what each point belongs to; null while that is not known */
  labels: Uint8Array | null;
  /** counts up each time that labels were changed in place */
  revision: number;
  /** parts that are drawn */
  visible: ReadonlySet<LabelName>;
  /** the part shown up, by larger points; the others are drawn faint */
  emphasised: LabelName | null;
  /** numbers of the points picked */
  picked: Uint32Array | null;
  names: Record<LabelName, string>;
  /** a line is being drawn around points, instead of the view being turned */
  lasso: boolean;
  onLasso: (line: readonly ScreenPoint[], projection: Projection) => void;
  description: string;
  calm: boolean;
  reset: number;
}

/** What the first view of a sorted scan is fitted to. */
const walls: readonly LabelName[] = ['back', 'left', 'right', 'rim'];
const pickedColour = '#17252a';

/** The points of a scan in 3D, coloured by what they belong to, y up. */
export function ScanView(props: ScanViewProps) {
  return (
    <Drawable besides="The list of parts and picking by place work as usual.">
      {(onLost) => <ScanDrawing {...props} onLost={onLost} />}
    </Drawable>
  );
}

function ScanDrawing({
  points,
  labels,
  revision,
  visible,
  emphasised,
  picked,
  names,
  lasso,
  onLasso,
  description,
  calm,
  reset,
  onLost,
}: ScanViewProps & { onLost: () => void }) {
  const count = points.length / 3;
  const shown = useMemo(() => shownPoints(count), [count]);
  const positions = useMemo(() => gathered(points, shown), [points, shown]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the labels are changed in place, which the revision tells
  const lists = useMemo(
    () => byLabel(shown, labels ?? new Uint8Array(count), LABEL_NAMES.length),
    [shown, labels, count, revision],
  );
  const subject = useMemo(() => (labels ? joined(walls.map((name) => lists[LABEL[name]]!)) : null), [labels, lists]);
  const pickedShown = useMemo(() => amongShown(shown, picked), [shown, picked]);
  const tags = useMemo(
    () => (labels ? tagsOf(positions, lists, visible, names) : []),
    [labels, positions, lists, visible, names],
  );
  const elements = useRef(new Map<string, HTMLElement>());
  const [readProjection, setReadProjection] = useState<ReadProjection | null>(null);
  return (
    <div className={frame.frame}>
      <div className={frame.frame} role="img" aria-label={description}>
        <Canvas frameloop="demand" flat dpr={[1, 2]} camera={{ fov: 40 }}>
          <color attach="background" args={[colours.room]} />
          {LABEL_NAMES.map(
            (name, label) =>
              visible.has(name) && (
                <ScanPoints
                  key={name}
                  positions={positions}
                  numbers={lists[label]!}
                  colour={labels ? partColours[name] : partColours.back}
                  size={emphasised === name ? 3.5 : 1.75}
                  opacity={emphasised === null || emphasised === name ? 1 : 0.3}
                />
              ),
          )}
          {pickedShown && (
            <ScanPoints positions={positions} numbers={pickedShown} colour={pickedColour} size={4} onTop />
          )}
          <TagProjector tags={tags} elements={elements} />
          <ScanCamera positions={positions} subject={subject} reset={reset} />
          <OrbitControls makeDefault enabled={!lasso} enableDamping={!calm} />
          <ProjectionReader onReady={setReadProjection} />
          <LossWatch onLost={onLost} />
        </Canvas>
        <TagLayer tags={tags} elements={elements} />
      </div>
      {lasso && <LassoSheet onLasso={(line) => readProjection && onLasso(line, readProjection())} />}
    </div>
  );
}

function joined(lists: readonly Uint32Array[]): Uint32Array | null {
  const all = new Uint32Array(lists.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const list of lists) {
    all.set(list, at);
    at += list.length;
  }
  return all.length > 0 ? all : null;
}

function gathered(positions: Float32Array, shown: Uint32Array): BufferAttribute {
  const some = new Float32Array(3 * shown.length);
  for (let i = 0; i < shown.length; i++) {
    const at = 3 * shown[i]!;
    some.set(positions.subarray(at, at + 3), 3 * i);
  }
  return new BufferAttribute(some, 3);
}

/** Of the points picked those that are drawn, by their numbers among these. Both lists go up. */
function amongShown(shown: Uint32Array, picked: Uint32Array | null): Uint32Array | null {
  if (!picked || picked.length === 0) return null;
  const found: number[] = [];
  let next = 0;
  for (let i = 0; i < shown.length && next < picked.length; i++) {
    while (next < picked.length && picked[next]! < shown[i]!) next++;
    if (picked[next] === shown[i]) found.push(i);
  }
  return Uint32Array.from(found);
}

/** Names of the parts in sight, each in the middle of its points. */
function tagsOf(
  positions: BufferAttribute,
  lists: readonly Uint32Array[],
  visible: ReadonlySet<LabelName>,
  names: Record<LabelName, string>,
): Tag[] {
  return LABEL_NAMES.flatMap((name, label): Tag[] => {
    const list = lists[label]!;
    if (!visible.has(name) || list.length === 0 || name === 'unknown') return [];
    const sum = [0, 0, 0];
    for (const i of list) for (const axis of [0, 1, 2]) sum[axis]! += positions.array[3 * i + axis]!;
    const at = sum.map((total) => total / list.length) as [number, number, number];
    return [{ key: name, kind: 'piece', text: names[name], at }];
  });
}
