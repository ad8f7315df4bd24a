import { areasOf, centreOf } from '../contact';
import type { Job } from '../job-file';
import type { Seat } from '../seat';
import { connected } from './patches';
import type { Contact } from './report';

/** Less than this share of the whole force is no contact. */
const LEAST_SHARE = 1e-3;

/** Where a sheet is held up, the strongest first. */
export function contactsOf({ how, pressed, supports, region }: Seat, { bedding }: Job): Contact[] {
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
      .map(([pu, pv], k) => ({ u: pu, v: pv, area: 0, force: shares[k]! * total }))
      .sort((one, other) => other.force - one.force);
  }
  if (!pressed) return [];
  const { grid, held, reaction } = pressed;
  const areas = areasOf(grid);
  const total = reaction.reduce((sum, force) => sum + force, 0);
  return connected(grid.across, grid.up, (k) => held[k] === 1 && reaction[k]! > 0)
    .map((splines): Contact => {
      const contact = { u: 0, v: 0, area: 0, force: 0 };
      for (const k of splines) {
        const [u, v] = centreOf(grid, k % grid.across, Math.floor(k / grid.across));
        contact.u += clamp(u, region.u) * reaction[k]!;
        contact.v += clamp(v, region.v) * reaction[k]!;
        contact.area += areas[k]!;
        contact.force += reaction[k]!;
      }
      return { ...contact, u: contact.u / contact.force, v: contact.v / contact.force };
    })
    .filter(({ force }) => force > LEAST_SHARE * total)
    .sort((one, other) => other.force - one.force);
}

const clamp = (value: number, [low, high]: readonly [number, number]): number => Math.min(Math.max(value, low), high);
