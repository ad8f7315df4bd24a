import type { EdgeName, Job, Panel, PanelEdge, Result, Side } from '../../../core';
import { type AlcoveShape, onWall, type Vec3 } from '../../geometry';

/** A measured length of the finished surround, drawn between two points. */
export interface Dimension {
  key: string;
  from: Vec3;
  to: Vec3;
  /** mm */
  value: number;
  /** standard deviation (1 sigma), mm, taking both ends' as independent */
  sd: number;
}

const OFF = 12;

/** Widths at the top and just over the rim, height in the middle, depth of both sides. */
export function dimensionsOf(shape: AlcoveShape, { panels }: Pick<Result, 'panels'>, job: Job): Dimension[] {
  const off = job.fit.bed + job.fit.thickness + OFF;
  const { back } = panels;
  const [low, high] = heightsOf(back);
  const at = onWall(shape, 'back', off);
  const width = (key: string, v: number): Dimension => {
    const [left, right] = [edgeAt(back, 'left', v), edgeAt(back, 'right', v)];
    return {
      key,
      from: at(left.at, v),
      to: at(right.at, v),
      value: right.at - left.at,
      sd: Math.hypot(left.sd, right.sd),
    };
  };
  const middle = edgeAt(back, 'bottom', 0);
  const depth = (side: Side): Dimension => {
    const v = low + 0.3 * (high - low);
    const [from, to] = [edgeAt(panels[side], 'back', v), edgeAt(panels[side], 'front', v)];
    const on = onWall(shape, side, off);
    return {
      key: side,
      from: on(from.at, v),
      to: on(to.at, v),
      value: to.at - from.at,
      sd: Math.hypot(from.sd, to.sd),
    };
  };
  return [
    width('width at the top', high - 60),
    width('width over the rim', low + 90),
    { key: 'height', from: at(0, middle.at), to: at(0, high), value: high - middle.at, sd: middle.sd },
    depth('left'),
    depth('right'),
  ];
}

function heightsOf({ outline }: Panel): [number, number] {
  const heights = outline.map(([, v]) => v);
  return [Math.min(...heights), Math.max(...heights)];
}

/** Where an edge runs at a place along it, straight between its marks. */
function edgeAt({ edges }: Panel, name: EdgeName, along: number): { at: number; sd: number } {
  const level = name === 'bottom' || name === 'top';
  const marks = ((edges[name] as PanelEdge | undefined)?.marks ?? []).map(({ u, v, sd }) =>
    level ? { x: u, y: v, sd } : { x: v, y: u, sd },
  );
  const next = marks.findIndex(({ x }) => x >= along);
  const [a, b] = next <= 0 ? [marks.at(next)!, marks.at(next)!] : [marks[next - 1]!, marks[next]!];
  const t = b.x === a.x ? 0 : (along - a.x) / (b.x - a.x);
  return { at: a.y + (b.y - a.y) * t, sd: Math.max(a.sd, b.sd) };
}
