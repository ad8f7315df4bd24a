import { type Job, type PanelName, settingOrder } from '../../../core';

/** Panels that stand already when a panel is brought in. */
export function setBefore(panel: PanelName, job: Pick<Job, 'fit'>): PanelName[] {
  const order = settingOrder(job);
  return order.slice(0, order.indexOf(panel));
}
