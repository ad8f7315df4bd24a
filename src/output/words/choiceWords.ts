import { formatLength, type Hiding, type HidingPair, type Job } from '../../core';
import { capital } from '../drawing';

/** Less than this of an edge in sight cannot be told from the joint, mm. */
const NOTICEABLE = 0.4;

/**
 * The difference between two ways of trimming in sentences: what each hides of the edges that wander, from the measured
 * taper. Sentences name the second way.
 * @param names of the first and the second way, within a sentence
 */
export function hidingWords(
  pairs: readonly HidingPair[],
  names: readonly [string, string],
  job: Pick<Job, 'display'>,
): string[] {
  const length = (mm: number): string => formatLength(mm, { unit: job.display, denominator: 32 });
  const sentences = pairs.flatMap(({ name, first, second }): string[] => {
    if (first === null && second === null) return [];
    if (first === null || second === null) {
      const [has, hasNot, there] = first === null ? [names[1], names[0], second!] : [names[0], names[1], first];
      return [
        `${has} covers the edge with the ${name}, ${length(there.lap)} at least; ${hasNot} leaves that edge open.`,
      ];
    }
    const [a, b] = [first.shows > NOTICEABLE, second.shows > NOTICEABLE];
    const taper = `the ${length(Math.max(first.taper, second.taper))} taper at the ${name}`;
    if (a && b) {
      return [
        `Neither hides ${taper}: ${names[0]} would show ${length(first.shows)}, ${names[1]} ${length(second.shows)}.`,
      ];
    }
    if (a !== b) {
      const [hides, shows, open] = a ? [names[1], names[0], first] : [names[0], names[1], second];
      return [`${hides} hides ${taper}; ${shows} would show ${length(open.shows)}.`];
    }
    if (Math.max(first.taper, second.taper) < NOTICEABLE || Math.abs(first.lap - second.lap) < NOTICEABLE) return [];
    const [more, less] = first.lap > second.lap ? [first, second] : [second, first];
    const [wider, narrower] = first.lap > second.lap ? names : [names[1], names[0]];
    return [
      `Both hide ${taper}: ${wider} laps the panel by ${length(more.lap)} at least, ${narrower} by ${length(less.lap)}.`,
    ];
  });
  return sentences.map(capital);
}

/** What one piece of trim hides, in a sentence. */
export function hidingSentence({ name, taper, lap, shows }: Hiding, { display: unit }: Pick<Job, 'display'>): string {
  const length = (mm: number): string => formatLength(mm, { unit, denominator: 32 });
  return shows > NOTICEABLE
    ? `${capital(name)}: too narrow for the ${length(taper)} taper of the panel's edge; ${length(shows)} would show.`
    : `${capital(name)}: hides the ${length(taper)} taper of the panel's edge and still laps it by ${length(lap)}.`;
}
