import type { WallReport } from '../../../../src/core/diagnose';
import type { JobInput } from '../../../../src/core/job-file';
import type { EdgeName, Mark, Panel } from '../../../../src/core/panel';
import type { Doubts } from '../../../../src/core/verdict/doubts';
import { wallVerdict } from '../../../../src/core/verdict/wall';
import { jobWith } from '../../../simulate';

export const sure: Doubts = { parameters: [], suspects: [] };

export const assuming = (...names: string[]): Doubts => ({
  parameters: names.map((name) => ({ name, value: 0, sd: 1, assumed: true })),
  suspects: [],
});

/** A wall 1000 wide and 2000 high that is true but for what is given. */
export const wall = (part: Partial<WallReport> = {}): WallReport => ({
  ...{ plumb: 0, plumbSd: 0, bow: 0, bowSd: 0, bowAcross: 0, bowAcrossSd: 0, twist: 0, twistSd: 0 },
  judged: { at: [0, 1000], height: [-1000, 1000] },
  sampled: { at: [], height: [], value: [], sd: [] },
  deviation: { at: [], height: [], plumb: { value: [], sd: [] }, flat: { value: [], sd: [] } },
  ...part,
});

const mark = (u: number, v: number, sd: number): Mark => ({ u, v, sd, sheet: [u, v], sliver: 0 });

interface Outline {
  back?: [bottom: number, top: number];
  front?: [bottom: number, top: number];
  bottom?: [back: number, front: number];
  sd?: number;
  gap?: boolean;
}

/** A side panel 1000 wide and 2000 high, square but for what is given. */
export function panel({
  back = [0, 0],
  front = [1000, 1000],
  bottom = [-1000, -1000],
  sd = 0,
  gap = false,
}: Outline = {}): Panel {
  const edge = (name: EdgeName, marks: Mark[]) => [name, { marks, sliver: { min: 0, max: 0 } }];
  const upright = ([low, high]: [number, number]) => [mark(low, -1000, sd), mark(high, 1000, sd)];
  return {
    edges: Object.fromEntries([
      edge('back', upright(back)),
      edge('front', upright(front)),
      edge('bottom', [mark(0, bottom[0], sd), mark(1000, bottom[1], sd)]),
    ]),
    gaps: gap ? [{ edge: 'front', from: [0, 0], to: [0, 1], max: 2 }] : [],
  } as unknown as Panel;
}

export const judgedWall = (
  part: Partial<WallReport> = {},
  outline: Outline = {},
  doubts: Doubts = sure,
  choices: Partial<JobInput> = {},
) => wallVerdict(jobWith([], { display: 'mm', ...choices }), doubts, 'left', wall(part), panel(outline));
