import type { CutMethod, EdgeName, Job, PanelName } from '../../core';
import type { Place, View } from './drawing';

export const methodWords: Record<CutMethod, string> = {
  factory: 'factory edge kept',
  plane: 'plane or sand',
  knife: 'knife: score and snap',
  jigsaw: 'jigsaw',
};

/**
 * Which side is up for a tool: a knife scores the face; an ordinary jigsaw blade cuts upwards and tears the side it
 * leaves.
 */
const sideUp: Record<CutMethod, string> = {
  factory: '',
  plane: 'either side up',
  knife: 'face up',
  jigsaw: 'back up (face up only with a down-cutting blade)',
};

const wasteSide: Record<Place, string> = { left: 'to the left', right: 'to the right', bottom: 'below', top: 'above' };

export const wasteWords = (method: CutMethod, place: Place): string =>
  method === 'factory' ? '' : `${sideUp[method]}, waste ${wasteSide[place]}`;

const edgeTitles: Record<EdgeName, string> = {
  left: 'Left edge',
  right: 'Right edge',
  back: 'Back edge',
  front: 'Front edge',
  bottom: 'Bottom edge',
  top: 'Top edge',
};

/** Left and right of the back panel are told as seen from the face, also when the back is up. */
export function edgeTitle(edge: EdgeName, view: View): string {
  const turned = view === 'back' && (edge === 'left' || edge === 'right');
  return turned ? `${edgeTitles[edge]} (as seen from the face)` : edgeTitles[edge];
}

const panelTitles: Record<PanelName, string> = {
  back: 'Back panel',
  left: 'Left side panel',
  right: 'Right side panel',
};

export function panelTitle(panel: PanelName, job: Job): string {
  return job.fit.wetWall === panel ? `${panelTitles[panel]} (wet wall)` : panelTitles[panel];
}

export const viewStatement: Record<View, string> = {
  face: 'FACE UP: drawn as you look at the finished face',
  back: 'BACK UP (MIRRORED): drawn as you look at the back of the panel, finished face down',
};
