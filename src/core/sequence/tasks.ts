import { bringingIn, carryingFirst, type GettingIn } from '../carry';
import { type Job, WALLS, type WallName } from '../job-file';
import type { Materials } from '../materials';
import { type CutMethod, type Panel, settingOrder } from '../panel';
import { extent } from '../range';
import { jointBatches } from './batches';
import { cautions } from './cautions';
import { cureTime } from './cure';
import type { Task } from './task';

/** What the order of work is made from. */
export interface Worked {
  panels: Record<WallName, Panel>;
  materials: Materials;
  gettingIn: GettingIn;
  /** pieces beside the panels, by id and name */
  legs: { id: string; label: string }[];
  trim: { id: string; label: string }[];
  shelves: { id: string; label: string }[];
}

const METRE = 1000;
const HOUR = 60;

/** However slow the work and fast the sealant, nobody tools less than this in one go, mm (common practice, no source). */
const SHORTEST_RUN = 150;

/** The steps of the job, each after those it stands on: back panel first, dry side, wet wall, then trim and seal. */
export function tasksFor(job: Job, worked: Worked): Task[] {
  const { rates, cure, temperature, skinOver } = job.schedule;
  const tasks: Task[] = [];
  const add = (id: string, label: string, duration: number, after: string[], more: Partial<Task> = {}): string => {
    tasks.push({ id, label, kind: 'work', duration, after, people: 1, cautions: [], joints: [], ...more });
    return id;
  };

  const off = add('shut-off', 'shut off water and power, protect tub and drain', rates.shutOff, [], {
    kind: 'gate',
    cautions: [cautions.water, cautions.electric],
  });
  const prepared = WALLS.map((wall) =>
    add(`prepare.${wall}`, `prepare the ${wall} wall: sound, dry, clean, high spots off`, rates.prepareWall, [off], {
      cautions: [cautions.oldWall, cautions.dust],
    }),
  );
  const corners = worked.materials.joints.filter(({ id }) => id.startsWith('corner.'));
  const taped = add(
    'tape-corners',
    'flashing tape up both inside corners',
    rates.tapeMetre * metres(corners),
    prepared,
  );

  let stand = taped;
  const set: string[] = [];
  for (const wall of settingOrder(job)) {
    const panel = worked.panels[wall];
    const cut = add(`cut.${wall}`, `cut the ${wall} panel`, cuttingTime(panel, job), [off], {
      cautions: [cautions.cutting, cautions.dust, ...carryingFirst(worked.gettingIn, wall)],
    });
    const holes =
      panel.holes.length === 0
        ? cut
        : add(
            `holes.${wall}`,
            `cut ${panel.holes.length} hole${panel.holes.length === 1 ? '' : 's'} in the ${wall} panel`,
            rates.hole * panel.holes.length,
            [cut],
            {
              cautions: [cautions.cutting, cautions.hiddenServices, ...bars(panel)],
            },
          );
    const dry = add(
      `dry-fit.${wall}`,
      `dry fit the ${wall} panel: scribe until every joint closes`,
      rates.dryFit,
      [holes, stand],
      {
        kind: 'gate',
        people: 2,
        cautions: [cautions.lifting, ...bringingIn(worked.gettingIn, wall)],
      },
    );
    const glued = add(
      `set.${wall}`,
      `adhesive on, set and press the ${wall} panel`,
      rates.adhesive + rates.setPanel,
      [dry],
      {
        people: 2,
        cautions: [cautions.lifting, ...bringingIn(worked.gettingIn, wall), cautions.solvent],
      },
    );
    set.push(glued);
    stand =
      wall === 'back'
        ? add('corner-bead', 'bead of sealant up the back panel in both corners', rates.jointMetre * metres(corners), [
            glued,
          ])
        : glued;
  }

  const pieces = (list: Worked['legs'], kind: string, each: number, after: string[]): string[] =>
    list.map(({ id, label }) => add(`${kind}.${id}`, `fit ${label}`, each, after, { cautions: [cautions.cutting] }));
  const legs = pieces(worked.legs, 'leg', rates.leg, [stand]);
  const trim = pieces(worked.trim, 'trim', rates.trimPiece, legs.length > 0 ? legs : [stand]);
  const held = add(
    'adhesive-cure',
    'adhesive takes up: leave the strips and tape on',
    HOUR * cureTime(cure.adhesive, temperature),
    set,
    {
      kind: 'wait',
      people: 0,
    },
  );
  const shelves = pieces(worked.shelves, 'shelf', rates.shelf, [held, ...trim]);
  const clean = add('clean', 'tape off joints, wipe with alcohol', rates.clean, [...trim, ...legs, ...shelves, stand], {
    cautions: [cautions.solvent],
  });

  // A batch is gunned and tooled within the skin-over time, at the person's own rate; a gun holds one paste at a time.
  const tooled = rates.jointMetre > 0 ? (skinOver / rates.jointMetre) * METRE : Number.POSITIVE_INFINITY;
  const longest = Math.max(SHORTEST_RUN, tooled);
  const batches = (['sealant', 'caulk'] as const).flatMap((filler) =>
    jointBatches(
      worked.materials.joints.filter((joint) => joint.filler === filler),
      longest,
    ).map((batch) => ({ ...batch, filler })),
  );
  let sealed = clean;
  batches.forEach(({ filler, length, parts }, i) => {
    sealed = add(
      `seal.${i + 1}`,
      `${filler === 'sealant' ? 'seal' : 'caulk'} and tool joints, run ${i + 1} of ${batches.length}`,
      rates.jointMetre * (length / METRE),
      [sealed],
      { cautions: [cautions.solvent], joints: parts },
    );
  });
  const cured = add(
    'sealant-cure',
    'sealant cures: keep water off',
    HOUR * cureTime(cure.sealant, temperature),
    [sealed],
    {
      kind: 'wait',
      people: 0,
    },
  );
  const plumbing =
    worked.panels.back.holes.length + worked.panels.left.holes.length + worked.panels.right.holes.length > 0
      ? add(
          'plumbing',
          'fit valve trim, spout and shower head; water on; look for leaks',
          rates.plumbing,
          [cured, held],
          {
            cautions: [cautions.water, cautions.licensed],
          },
        )
      : cured;
  add(
    'hand-over',
    "check the water's temperature, hand over the record and care notes",
    rates.handOver,
    [plumbing, held],
    {
      kind: 'gate',
      cautions: [cautions.hotWater, ...WALLS.flatMap((wall) => bars(worked.panels[wall]))],
    },
  );
  return tasks;
}

const bars = ({ holes }: Panel): string[] => (holes.some(({ kind }) => kind === 'grab-bar') ? [cautions.grabBar] : []);

function cuttingTime({ edges, outline }: Panel, { schedule: { rates } }: Job): number {
  const perMetre: Record<CutMethod, number> = {
    factory: 0,
    plane: rates.planeMetre,
    knife: rates.knifeMetre,
    jigsaw: rates.jigsawMetre,
  };
  const [[left, right], [bottom, top]] = [extent(outline, 0), extent(outline, 1)];
  const [across, up] = [(right - left) / METRE, (top - bottom) / METRE];
  return Object.entries(edges).reduce(
    (sum, [name, { method }]) => sum + perMetre[method] * (name === 'bottom' || name === 'top' ? across : up),
    0,
  );
}

const metres = (joints: readonly { length: number }[]): number =>
  joints.reduce((sum, { length }) => sum + length, 0) / METRE;
