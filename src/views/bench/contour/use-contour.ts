import { type Point, splitContour } from '../../../core';
import { sectionFault, useDraft, useSession } from '../../../job';

/** Takes a line for the contour of rim and apron; gives a sentence where the job cannot hold it. */
export function useContour(): (line: readonly Point[]) => string | null {
  const rim = useDraft(({ draft }) => draft.job.rim);
  const { chooseAll } = useSession().draft.getState();
  return (line) => {
    const contour = splitContour(line);
    const fault = sectionFault('rim', { ...rim, ...contour });
    if (fault !== null) return `This contour cannot be used: it ${fault}.`;
    chooseAll([
      [['rim', 'profile'], contour.profile],
      [['rim', 'apron'], contour.apron],
    ]);
    return null;
  };
}
