import { MM_PER_INCH } from '../length';
import type { EdgeName, Mark, Panel } from '../panel';
import { judge } from './judge';
import type { EdgeRunOut } from './report';

/**
 * What the sealant or the trim of a joint takes up of an edge that is cut straight and square, mm: 1/8 in (common
 * practice, no source).
 */
export const JOINT_TAKES_UP = MM_PER_INCH / 8;

const level = (edge: EdgeName): boolean => edge === 'bottom' || edge === 'top';

/** How far each edge that meets a wall or the rim, and the front edge, runs out of a plumb or level straight line. */
export function runOuts({ edges }: Pick<Panel, 'edges'>): EdgeRunOut[] {
  return (Object.entries(edges) as [EdgeName, { marks: Mark[] }][])
    .filter(([edge, { marks }]) => edge !== 'top' && marks.length > 1)
    .map(([edge, { marks }]) => {
      const across = ({ u, v }: Mark): number => (level(edge) ? v : u);
      const sorted = [...marks].sort((a, b) => across(a) - across(b));
      const [low, high] = [sorted[0]!, sorted.at(-1)!];
      const [value, sd] = [across(high) - across(low), Math.hypot(high.sd, low.sd)];
      return { edge, value, sd, judgement: judge({ value, sd, assumed: false }, JOINT_TAKES_UP) };
    });
}

/** Width at the top less width at the bottom, mm. Its standard deviation takes the four marks as independent. */
export function taperOf({ edges }: Pick<Panel, 'edges'>): { value: number; sd: number } {
  const near = edges.left ?? edges.back;
  const far = edges.right ?? edges.front;
  const [a, b, c, d] = [near?.marks[0], near?.marks.at(-1), far?.marks[0], far?.marks.at(-1)];
  if (!a || !b || !c || !d) return { value: 0, sd: 0 };
  return { value: d.u - b.u - (c.u - a.u), sd: Math.hypot(a.sd, b.sd, c.sd, d.sd) };
}
