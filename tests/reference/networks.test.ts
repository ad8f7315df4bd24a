// Survey networks from textbooks; book and page stand in `source` of each data file. Adjusted coordinates are the
// book's; standard deviations, redundancy numbers and standardized residuals were recomputed independently.
import { describe, expect, it } from 'vitest';
import { type LeastSquaresSolution, solveLeastSquares } from '../../src/core/least-squares';
import { given, normalCritical, residualCorrelation, searchBlunders, tauCritical } from '../../src/core/reliability';
import blankenbach from './data/net_blankenbach_willert_3d_blunders.json';
import level from './data/net_ghilani_12_6_level.json';
import trilateration from './data/net_ghilani_14_5_trilateration.json';
import blunder from './data/net_ghilani_21_1_blunder.json';
import braced from './data/net_ghilani_21_10_braced_quad.json';
import link from './data/net_ghilani_wolf_link.json';
import levelFree from './data/net_niemeier_level_free.json';
import fixed from './data/net_strang_borre_trilat_fix.json';
import free from './data/net_strang_borre_trilat_free.json';
import distances from './data/net_wolf_3d_distance.json';
import { type Network, networkProblem, unknownsOf } from './network';

const NETWORKS: Network[] = [
  level,
  levelFree,
  trilateration,
  fixed,
  free,
  braced,
  link,
  distances,
  blankenbach,
  blunder,
];

function solved(network: Network): LeastSquaresSolution {
  const outcome = solveLeastSquares(networkProblem(network));
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.solution;
}

/** The published value of an unknown and its standard deviation, m; a point's columns are [value, shift, sd] per axis. */
function published({ published_adjusted, dimension }: Network, { point, axis }: { point: string; axis: number }) {
  const columns = published_adjusted[point]!;
  return { value: columns[3 * axis]!, sd: columns[3 * axis + 2]! / (dimension === 1 ? 1000 : 100) };
}

describe.each(NETWORKS.map((network) => [network.name, network] as const))('%s', (name, network) => {
  const solution = solved(network);
  const { recomputed } = network;
  const unknowns = unknownsOf(network);
  const book = name === 'ghilani_21_1_blunder' ? inFileOrder(network) : network;

  it("has the book's coordinates to half the last digit printed", () => {
    expect(solution.converged).toBe(true);
    unknowns.forEach((unknown, j) => {
      expect(Math.abs(solution.x[j]! - published(book, unknown).value), unknown.name).toBeLessThan(5.1e-5);
    });
  });

  it("has the book's standard deviations, scaled with the estimated unit weight", () => {
    unknowns.forEach((unknown, j) => {
      const sd = solution.s0! * Math.sqrt(solution.cofactors.get(j, j));
      const again = recomputed.sigma_mm_aposteriori[unknown.point]![unknown.axis]! / 1000;
      expect(Math.abs(sd / again - 1), unknown.name).toBeLessThan(1e-4);
      const { sd: printed } = published(book, unknown);
      const halfDigit = name === 'ghilani_21_1_blunder' ? 6.1e-5 : 5.5e-6;
      expect(Math.abs(sd - printed), unknown.name).toBeLessThan(halfDigit);
    });
  });

  it('has its degrees of freedom, unit weight, redundancy numbers and standardized residuals', () => {
    const count = network.observations.length;
    expect(solution.dof).toBe(recomputed.dof);
    expect(solution.s0!).toBeCloseTo(recomputed.s0, 4);
    expect(solution.redundancy.reduce((sum, each) => sum + each, 0)).toBeCloseTo(recomputed.dof, 6);
    for (let i = 0; i < count; i++) {
      expect(solution.redundancy[i]!, `redundancy ${i}`).toBeCloseTo(recomputed.redundancy[i]!, 5);
      if (recomputed.redundancy[i]! < 1e-6) continue;
      const w = Math.abs(solution.misfit[i]!) / Math.sqrt(solution.redundancy[i]!);
      expect(Math.abs(w / recomputed.w_baarda_apriori1[i]! - 1), `w ${i}`).toBeLessThan(2e-3);
      expect(w / solution.s0!, `tau ${i}`).toBeCloseTo(recomputed.tau_standardized[i]!, 3);
    }
  });
});

describe('data snooping', () => {
  const critical = () => normalCritical(0.001);
  const search = (network: Network) =>
    searchBlunders(networkProblem(network), solved(network), { test: 'w', critical });
  const namesOf = (network: Network, rows: number[]): string[] =>
    rows.map((row) => {
      const { type, from, to, at } = network.observations[row]!;
      return type === 'd' ? `${from}-${to}` : `angle at ${at}`;
    });

  it('names the two gross distances that the source marks, and no more', () => {
    const { blunders, cleaned } = search(blankenbach);
    expect(
      namesOf(
        blankenbach,
        blunders.map(({ row }) => row),
      ).sort(),
    ).toEqual(['MS-103', 'MS-51']);
    expect(largestW(cleaned)).toBeCloseTo(1.03, 2);
  });

  it('names the distance and the angle that the source marks, and stops just under the critical value', () => {
    const { blunders, cleaned } = search(blunder);
    expect(
      namesOf(
        blunder,
        blunders.map(({ row }) => row),
      ).sort(),
    ).toEqual(['3-4', 'angle at 103']);
    expect(cleaned.s0!).toBeCloseTo(1.147, 3);
    expect(largestW(cleaned)).toBeCloseTo(3.25, 2);
  });

  it('cannot tell which reading is wrong where only one is redundant, but what each would have to be', () => {
    const solution = solved(trilateration);
    const { blunders } = search(trilateration);
    expect(blunders).toHaveLength(1);
    const [{ row, alternatives }] = blunders as [(typeof blunders)[number]];
    expect([row, ...alternatives].sort()).toEqual([0, 1, 2, 3, 4]);
    for (let i = 1; i < 5; i++) expect(Math.abs(residualCorrelation(solution, 0, i))).toBeCloseTo(1, 6);
    // The book's right distance, and with it nothing is left to name.
    const { value, sigma } = trilateration.observations[0]!;
    expect(value - sigma * given(solution, [0])!.errors[0]!.value).toBeCloseTo(5870.64, 2);
    const mended = trilateration.observations.map((each, i) => (i === 0 ? { ...each, value: 5870.64 } : each));
    expect(search({ ...trilateration, observations: mended }).blunders).toEqual([]);
  });

  it('finds nothing in a network without gross errors', () => {
    for (const network of [level, link, distances]) expect(search(network).blunders).toEqual([]);
  });

  it('by tau takes a network whose sigmas were all stated too small for what it is', () => {
    const byTau = (network: Network) =>
      searchBlunders(networkProblem(network), solved(network), {
        test: 'tau',
        critical: (tests, dof) => tauCritical(0.01 / tests, dof),
      });
    for (const network of [levelFree, fixed]) {
      expect(search(network).blunders.length).toBeGreaterThan(0);
      expect(byTau(network).blunders).toEqual([]);
    }
    // Nearly all of this one's misfit is in a single angle, whatever the sigmas.
    expect(byTau(braced).blunders.map(({ row }) => row)).toEqual([6]);
  });
});

function largestW({ misfit, redundancy }: LeastSquaresSolution): number {
  return Math.max(...misfit.map((each, i) => (redundancy[i]! > 1e-6 ? Math.abs(each) / Math.sqrt(redundancy[i]!) : 0)));
}

/** Its file prints point numbers of three digits cut to two. */
function inFileOrder(network: Network): Network {
  const { published_adjusted: printed } = network;
  const cut = { 102: '10', 103: '01', 201: '20', 202: '02', 203: '03' };
  const whole = Object.entries(cut).map(([point, name]) => [point, printed[name]!]);
  return { ...network, published_adjusted: { ...printed, ...Object.fromEntries(whole) } };
}
