import type { Job, Result, Side, WallName } from '../../../core';
import { wallTitle } from '../../findings';
import styles from './elevation.module.css';
import { type Frame, type Point, rimLine, wallOutline } from './frame';
import type { LineName } from './lineNames';
import type { Paper } from './paper';

interface GroundProps {
  frame: Frame;
  paper: Paper;
  names: readonly LineName[];
  job: Job;
  result: Result;
  picked: WallName | null;
}

const walls: readonly WallName[] = ['left', 'back', 'right'];
const sides: readonly Side[] = ['left', 'right'];

/** The unrolled walls with corners, rim, level and plumb line; broken where a size is supposed, not measured. */
export function Ground({ frame, paper, names, job, result, picked }: GroundProps) {
  const { box, top } = frame;
  const points = (line: readonly Point[]) =>
    line
      .map((point) =>
        paper
          .at(point)
          .map((value) => value.toFixed(1))
          .join(),
      )
      .join(' ');
  const supposed = (what: string) => result.adjustment.assumed.includes(what) || undefined;
  const upright = (x: (y: number) => Point, from: number) => points([x(from), x(top)]);
  const [levelLeft, levelRight] = [
    frame.point('left', frame.front.left(0), 0),
    frame.point('right', frame.front.right(0), 0),
  ];
  const level = [paper.at(levelLeft), paper.at(levelRight)] as const;
  const [plumbX, plumbTop] = paper.at([0, top]);
  const [, plumbFoot] = paper.at([0, frame.rim('back', 0)]);
  const panelsTop = paper.at([box.left, job.fit.top])[1];
  return (
    <g>
      {walls.map((wall) => (
        <polygon
          key={wall}
          className={styles.wall}
          data-wall={wall}
          data-picked={picked === wall || undefined}
          points={points(wallOutline(frame, wall))}
        />
      ))}
      {walls.map((wall) => {
        const middle = wall === 'back' ? 0 : frame.front[wall](0) / 2;
        return (
          <text key={wall} className={styles.wallName} x={paper.at(frame.point(wall, middle, top))[0]} y={18}>
            {wallTitle[wall]}
          </text>
        );
      })}
      {sides.map((side) => (
        <polyline
          key={side}
          className={styles.corner}
          data-supposed={supposed(`${side} wall: position`)}
          points={upright((y) => frame.point(side, 0, y), frame.rim(side, 0))}
        />
      ))}
      {sides.map((side) => (
        <polyline
          key={side}
          className={styles.front}
          data-supposed={supposed(`front edge of the ${side} wall: position`)}
          points={upright((y) => frame.point(side, frame.front[side](y), y), frame.rim(side, frame.front[side](0)))}
        />
      ))}
      <line
        className={styles.panelsTop}
        x1={paper.at([box.left, 0])[0]}
        x2={paper.at([box.right, 0])[0]}
        y1={panelsTop}
        y2={panelsTop}
      />
      <polyline className={styles.rim} data-supposed={supposed('rim: height')} points={points(rimLine(frame))} />
      <line className={styles.level} x1={level[0][0]} x2={level[1][0]} y1={level[0][1]} y2={level[0][1]} />
      <line className={styles.plumb} x1={plumbX} x2={plumbX} y1={plumbTop} y2={plumbFoot} />
      {names.map(({ text, of, at: [x, y] }) => (
        <text key={text} className={of === 'lines' ? styles.lineName : styles.edgeName} x={x} y={y}>
          {text}
        </text>
      ))}
    </g>
  );
}
