import type { Job } from '../../job-file';
import type { Panel } from '../../panel';
import { extent } from '../../range';
import { panelId } from './blank';
import type { OpenSheet } from './openSheet';
import type { Region } from './region';

/** Each panel on its own sheet where it was laid; every way of splitting what is left around the panels. */
export function ownSheets(job: Job, panels: readonly Panel[]): OpenSheet[][] {
  return panels
    .map((panel) => openSheets(job, panel))
    .reduce<OpenSheet[][]>((ways, sheets) => ways.flatMap((way) => sheets.map((sheet) => [...way, sheet])), [[]]);
}

/** The sheet seen from its face, with the strips above and below the panel cut right across it, or those beside it. */
function openSheets({ cutting }: Job, { name, flat }: Panel): OpenSheet[] {
  const { sheet } = flat;
  const [width, height] = [sheet.right - sheet.left, sheet.top - sheet.bottom];
  const [low, high] = extent(flat.outline, 0).map((u) => (name === 'left' ? sheet.right - u : u - sheet.left)) as [
    number,
    number,
  ];
  const [x0, x1] = [Math.max(0, Math.min(low, high)), Math.min(width, Math.max(low, high))];
  const [bottom, top] = extent(flat.outline, 1).map((v) => v - sheet.bottom) as [number, number];
  const [y0, y1] = [Math.max(0, bottom), Math.min(height, top)];
  const { kerf } = cutting;
  const placed = [
    { piece: panelId(name), x: x0, y: y0, width: x1 - x0, height: y1 - y0, turned: false, part: { number: 1, of: 1 } },
  ];
  const strips = (across: boolean): Region[] => {
    const [left, right] = across ? [x0, x1] : [0, width + kerf];
    const [below, above] = across ? [0, height + kerf] : [y0, y1];
    return [
      { x: 0, y: below, width: x0, height: above - below },
      { x: x1 + kerf, y: below, width: width - x1, height: above - below },
      { x: left, y: 0, width: right - left, height: y0 },
      { x: left, y: y1 + kerf, width: right - left, height: height - y1 },
    ].filter((region) => region.width > kerf && region.height > kerf);
  };
  return [false, true].map((across) => ({ like: name, width, height, placed, free: strips(across) }));
}
