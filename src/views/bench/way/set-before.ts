import type { Job, PanelName } from '../../../core';

/** Panels that stand already when a panel is brought in: the back panel first, the dry side, then the wet wall. */
export function setBefore(panel: PanelName, { fit }: Pick<Job, 'fit'>): PanelName[] {
  const order: PanelName[] = fit.wetWall === 'left' ? ['back', 'right', 'left'] : ['back', 'left', 'right'];
  return order.slice(0, order.indexOf(panel));
}
