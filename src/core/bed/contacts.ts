import { areasOf, centreOf } from '../contact';
import type { Job } from '../job-file';
import { Z_95 } from '../reliability';
import type { Seat } from '../seat';
import { connected } from './patches';
import type { BedReport, Contact } from './report';

type Rectangle = Pick<Contact, 'from' | 'to'>;

/** So near, mm, a sheet touches. */
const TOUCHING = 0.01;
/** Less than this share of the whole force is no contact. */
const LEAST_SHARE = 1e-3;

/** Where a sheet is held up, the strongest first, and how far about it the survey leaves that open. */
export function contactsOf(seat: Seat, job: Job, map: BedReport['map']): Contact[] {
  const stretches = stretchesWithin(map, job.fit.bed);
  return placesOf(seat, job).map((place) => ({ ...place, ...about(place, stretches) }));
}

/**
 * Stretches of the map where the bed may, 95 of 100 times, be no thicker than where the sheet touches: it lies nearer to
 * the wall there than its ±.
 */
function stretchesWithin({ at, height, value, sd }: BedReport['map'], bed: number): Rectangle[] {
  const columns = at.length;
  const row = (k: number): number => Math.floor(k / columns);
  const near = (k: number): boolean =>
    value[row(k)]![k % columns]! - bed <= Math.max(Z_95 * sd[row(k)]![k % columns]!, TOUCHING);
  return connected(columns, height.length, near).map((nodes) => ({
    from: [at[Math.min(...nodes.map((k) => k % columns))]!, height[row(Math.min(...nodes))]!],
    to: [at[Math.max(...nodes.map((k) => k % columns))]!, height[row(Math.max(...nodes))]!],
  }));
}

/** The rectangle about a contact and all stretches in which it lies. */
function about({ u, v, from, to }: Contact, stretches: readonly Rectangle[]): Rectangle {
  const around = stretches.filter(
    (each) => u >= each.from[0] - 1 && u <= each.to[0] + 1 && v >= each.from[1] - 1 && v <= each.to[1] + 1,
  );
  const all = [{ from, to }, ...around];
  return {
    from: [Math.min(...all.map((each) => each.from[0])), Math.min(...all.map((each) => each.from[1]))],
    to: [Math.max(...all.map((each) => each.to[0])), Math.max(...all.map((each) => each.to[1]))],
  };
}

function placesOf({ how, pressed, supports, region }: Seat, { bedding }: Job): Contact[] {
  if (how === 'rigid' && supports) {
    const { u, v } = region;
    const total = bedding.pressing * 1e-6 * (u[1] - u[0]) * (v[1] - v[0]);
    const middle = [(u[0] + u[1]) / 2, (v[0] + v[1]) / 2] as const;
    const area = (a: readonly number[], b: readonly number[], c: readonly number[]): number =>
      (b[0]! - a[0]!) * (c[1]! - a[1]!) - (c[0]! - a[0]!) * (b[1]! - a[1]!);
    const [a, b, c] = supports;
    const whole = area(a, b, c);
    // The load through the middle is shared as the triangle's areas opposite.
    const shares = [area(middle, b, c), area(a, middle, c), area(a, b, middle)].map((part) => part / whole);
    return supports
      .map(
        ([pu, pv], k): Contact => ({
          u: pu,
          v: pv,
          area: 0,
          force: shares[k]! * total,
          from: [pu, pv],
          to: [pu, pv],
        }),
      )
      .sort((one, other) => other.force - one.force);
  }
  if (!pressed) return [];
  const { grid, held, reaction } = pressed;
  const areas = areasOf(grid);
  const total = reaction.reduce((sum, force) => sum + force, 0);
  return connected(grid.across, grid.up, (k) => held[k] === 1 && reaction[k]! > 0)
    .map((splines): Contact => {
      const contact = { u: 0, v: 0, area: 0, force: 0 };
      const [columns, rows]: [number[], number[]] = [[], []];
      for (const k of splines) {
        const [u, v] = centreOf(grid, k % grid.across, Math.floor(k / grid.across));
        const place = [clamp(u, region.u), clamp(v, region.v)] as const;
        columns.push(place[0]);
        rows.push(place[1]);
        contact.u += place[0] * reaction[k]!;
        contact.v += place[1] * reaction[k]!;
        contact.area += areas[k]!;
        contact.force += reaction[k]!;
      }
      return {
        ...contact,
        u: contact.u / contact.force,
        v: contact.v / contact.force,
        from: [Math.min(...columns), Math.min(...rows)],
        to: [Math.max(...columns), Math.max(...rows)],
      };
    })
    .filter(({ force }) => force > LEAST_SHARE * total)
    .sort((one, other) => other.force - one.force);
}

const clamp = (value: number, [low, high]: readonly [number, number]): number => Math.min(Math.max(value, low), high);
