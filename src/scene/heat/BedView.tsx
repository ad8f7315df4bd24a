import { useMemo } from 'react';
import type { Job, Result, WallName } from '../../core';
import { AlcoveStage } from '../AlcoveStage';
import { Drawable } from '../Drawable';
import { alcoveShape, boxOf, exaggerated, onWall, rimSolid } from '../geometry';
import type { Tag } from '../tags';
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
    const on = onWall(shape, panel, 4);
    const tag = (key: string, text: string, { u, v }: { u: number; v: number }): Tag => ({
      key: `${panel} ${key}`,
      kind: 'hole',
      text,
      at: place(on(u, v)),
    });
    const { thickest, shims } = result.bedding[panel];
    return [
      tag('thickest', bedTag(thickest, lengths), thickest),
      ...shims.list.map((shim, k) => tag(`shim ${k + 1}`, `shim ${k + 1}: ${lengths.fine(shim.thickness)}`, shim)),
    ];
  }, [drawn, result, panel, lengths]);
  return (
    <div className={styles.stage}>
      <AlcoveStage rim={drawn.rim} box={drawn.box} {...{ tags, description, calm, reset, onLost }}>
        {drawn.walls.map((wall) => (
          <HeatWallMesh key={wall.name} wall={wall} range={range} interval={interval} />
        ))}
      </AlcoveStage>
    </div>
  );
}

/** An even bed is chosen and has no ±. */
const bedTag = ({ value, sd }: { value: number; sd: number }, lengths: BedViewProps['lengths']): string =>
  sd === 0 ? `bed ${lengths.fine(value)} all over` : `bed ${lengths.fine(value)} ${lengths.plusMinus(sd)}`;
