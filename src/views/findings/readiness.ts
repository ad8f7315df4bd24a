import { panelSizeWords, type Result } from '../../core';

/** A cut edge less certain than this is not ready to be cut, mm (1/8 in): scribing on dry fit no longer makes up for it. */
const leastCertain = 3.2;

export interface Readiness {
  /** sizes and positions that no reading gives, in words */
  unmeasured: string[];
  /** 95 % half-width of the least certain cut edge, mm, where that is too much to cut by; else null */
  uncertain: number | null;
}

/** What has to be measured before the panels' sizes mean anything. */
export function readiness({ adjustment, panels }: Pick<Result, 'adjustment' | 'panels'>): Readiness {
  const unmeasured = adjustment.parameters
    .filter(({ assumed, name }) => assumed && name in panelSizeWords)
    .map(({ name }) => panelSizeWords[name]!);
  const worst = Math.max(...Object.values(panels).map(({ worst95 }) => worst95));
  return { unmeasured, uncertain: worst > leastCertain ? worst : null };
}
