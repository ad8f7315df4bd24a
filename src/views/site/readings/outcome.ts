import { type ReadingReport, type Suspect, Z_95 } from '../../../core';
import type { Lengths, Weight } from '../../parts';

export interface Outcome {
  weight: Weight;
  words: string;
  detail: string | null;
}

interface Given {
  report: ReadingReport;
  suspects: readonly Suspect[];
  lengths: Lengths;
  name: (id: string) => string;
}

const degrees = (value: number): string => `${value.toFixed(1)}°`;

/** What the adjustment found about a reading, in words. */
export function outcomeOf({ report, suspects, lengths, name }: Given): Outcome {
  const angle = report.kind === 'angle';
  const amount = (value: number) => (angle ? degrees(Math.abs(value)) : lengths.fine(Math.abs(value)));
  const value = (of: number) => (angle ? degrees(of) : lengths.fine(of));
  const plusMinus = angle ? `±${(Z_95 * report.sd).toFixed(1)}°` : lengths.plusMinus(report.sd);
  if (report.flag === 'off' || report.residual === null) return { weight: 'plain', words: 'left out', detail: null };
  if (report.flag === 'unchecked') {
    return {
      weight: 'plain',
      words: 'nothing checks this reading',
      detail: `taken as ${value(report.observed)} ${plusMinus}`,
    };
  }
  const fits = value(report.observed + report.residual);
  const small = Math.abs(report.residual) < (angle ? 0.05 : 0.4);
  const difference = small ? 'agrees' : `${amount(report.residual)} ${report.residual > 0 ? 'more' : 'less'} fits`;
  const slip = report.mdb === null || report.kind === 'plumb' ? null : `slips under ${amount(report.mdb)} go unseen`;
  const suspect = suspects.find(({ id }) => id === report.id);
  if (suspect) {
    const others = suspect.alternatives.map(name).join(', ');
    return {
      weight: 'bad',
      words: 're-measure this one',
      detail:
        `reads ${value(report.observed)}, the other readings point to ${value(suspect.fits)}` +
        (suspect.located ? '' : `; the readings cannot tell whether it is this one${others ? ` or ${others}` : ''}`),
    };
  }
  const doubted = suspects.find(({ alternatives }) => alternatives.includes(report.id));
  if (doubted) {
    return {
      weight: 'warn',
      words: `may be wrong instead of ${name(doubted.id)}`,
      detail: `reads ${value(report.observed)} ${plusMinus}`,
    };
  }
  return {
    weight: suspects.length > 0 && !small ? 'plain' : 'good',
    words: small ? 'agrees' : `${difference}: ${fits}`,
    detail: [plusMinus, slip].filter(Boolean).join(', '),
  };
}
