import { useMemo } from 'react';
import type { Job, PanelName, Result } from '../../core';
import { AlcoveStage } from '../AlcoveStage';
import { BuiltMesh } from '../BuiltMesh';
import { colours } from '../colours';
import { Drawable } from '../Drawable';
import { drawnAlcove, type Vec3 } from '../geometry';
import { Polyline } from '../Polyline';
import { movedPanel } from './moved-panel';
import { poseBetween } from './pose-between';

export interface WayViewProps {
  result: Result;
  /** the job that `result` belongs to */
  job: Job;
  panel: PanelName;
  /** panels that stand already */
  set: readonly PanelName[];
  /** place among the panel's poses, with parts of a step */
  at: number;
  /** where one looks from */
  from: 'room' | 'above';
  /** one sentence that says what is drawn */
  description: string;
  calm: boolean;
}

const directions: Record<WayViewProps['from'], Vec3> = { room: [0.55, 0.45, 1], above: [0.12, 1, 0.55] };

/** A panel on its way to its wall, the alcove drawn as it is. */
export function WayView(props: WayViewProps) {
  return (
    <Drawable besides="The steps beside it say the same in words.">
      {(onLost) => <Drawing {...props} onLost={onLost} />}
    </Drawable>
  );
}

function Drawing({
  result,
  job,
  panel,
  set,
  at,
  from,
  description,
  calm,
  onLost,
}: WayViewProps & { onLost: () => void }) {
  const drawn = useMemo(() => drawnAlcove(result, job, 1, 0), [result, job]);
  const { poses } = result.gettingIn.panels[panel];
  const still = drawn.panels.find(({ name }) => name === panel)!;
  const moving = useMemo(
    () => (poses.length === 0 ? still.solid : movedPanel(still, poseBetween(poses, at))),
    [still, poses, at],
  );
  const box = useMemo(() => ({ ...drawn.box, front: drawn.box.front + ROOM }), [drawn]);
  const over = useMemo(() => overhead(drawn.box, job), [drawn, job]);
  return (
    <AlcoveStage
      rim={drawn.rim}
      {...{ box, description, calm, onLost }}
      reset={from === 'room' ? 0 : 1}
      from={directions[from]}
    >
      {drawn.walls.map((wall, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: always the same three walls in the same order
        <BuiltMesh key={i} data={wall}>
          <meshStandardMaterial color={colours.wall} roughness={0.95} />
        </BuiltMesh>
      ))}
      {over.map((points, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: always the same lines in the same order
        <Polyline key={i} points={points} colour={colours.outline} width={2} dashed closed />
      ))}
      {drawn.panels
        .filter(({ name }) => set.includes(name))
        .map(({ name, solid }) => (
          <BuiltMesh key={name} data={solid.mesh}>
            <meshStandardMaterial color={colours.panel} roughness={0.55} />
          </BuiltMesh>
        ))}
      <BuiltMesh data={moving.mesh}>
        <meshStandardMaterial color={colours.panelPicked} roughness={0.55} transparent opacity={0.8} />
      </BuiltMesh>
      <Polyline points={moving.faceOutline} colour={colours.outlinePicked} width={3} closed />
    </AlcoveStage>
  );
}

/** Floor of the room that is drawn before the alcove, mm. */
const ROOM = 200;

/** Ceiling and header, where they are given, as lines over the alcove. */
function overhead({ left, right, front }: { left: number; right: number; front: number }, { carrying }: Job): Vec3[][] {
  const { ceiling, header } = carrying;
  const frame = (y: number, back: number): Vec3[] => [
    [left, y, back],
    [right, y, back],
    [right, y, front],
    [left, y, front],
  ];
  return [
    ...(ceiling === undefined ? [] : [frame(ceiling, 0)]),
    ...(header === undefined ? [] : [frame(header, front - 1)]),
  ];
}
