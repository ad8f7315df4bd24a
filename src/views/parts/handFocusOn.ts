const ROW = '[data-row]';
const ROWS = '[data-rows]';
const FOCUSABLE = 'input, select, textarea, button, summary, a[href]';

let watching: MutationObserver | null = null;

/**
 * Removes a row that has the focus and, once the row is gone, hands the focus on: to the next row, else the one before,
 * else what adds to the list or the list's heading, so that nobody who works by keyboard is sent back to the top of the
 * page. A row may go later than `remove` returns. Focus that is somewhere by then stays there.
 *
 * Lists are marked `data-rows`, rows `data-row`, what adds to a list `data-adds`. In a row the control with the same
 * `data-removes` is taken, else the one marked `data-takes-focus`, else the first. A list that goes with its last row
 * leaves it to the list around it.
 * @param from the control that removes its row, or one in that row
 */
export function handFocusOn(from: HTMLElement, remove: () => void): void {
  const levels = levelsOf(from);
  const removes = from.dataset.removes ?? '';
  watching?.disconnect();
  const observer = new MutationObserver(() => {
    if (!levels.some(({ list, row, count }) => row?.isConnected === false || rowsOf(list).length < count)) return;
    observer.disconnect();
    if (!hasFocus()) placeFrom(levels, removes)?.focus();
  });
  watching = observer;
  observer.observe(document.body, { childList: true, subtree: true });
  remove();
}

/** A list around a control, the row of it that holds the control, and how many rows it has. */
interface Level {
  list: Element;
  row: Element | null;
  at: number;
  count: number;
}

function levelsOf(from: Element): Level[] {
  const levels: Level[] = [];
  for (let list = from.closest(ROWS); list; list = list.parentElement?.closest(ROWS) ?? null) {
    const rows = rowsOf(list);
    const at = rows.findIndex((row) => row.contains(from));
    levels.push({ list, row: rows[at] ?? null, at: Math.max(at, 0), count: rows.length });
  }
  return levels;
}

const rowsOf = (list: Element): Element[] =>
  [...list.querySelectorAll(ROW)].filter((row) => row.parentElement?.closest(ROWS) === list);

function placeFrom(levels: readonly Level[], removes: string): HTMLElement | null {
  const left = levels.filter(({ list }) => list.isConnected);
  for (const { list, row, at } of left) {
    const rows = rowsOf(list);
    const to = row?.isConnected && levels[0]?.row !== row ? row : (rows[at] ?? rows[at - 1]);
    const place = (to && inRow(to, removes)) ?? usable(list, '[data-adds]')[0];
    if (place) return place;
  }
  const heading = left.at(-1)?.list.querySelector<HTMLElement>('h1, h2, h3') ?? null;
  heading?.setAttribute('tabindex', '-1');
  return heading ?? document.querySelector<HTMLElement>('main');
}

const inRow = (row: Element, removes: string): HTMLElement | null =>
  usable(row, `[data-removes="${CSS.escape(removes)}"]`).find((each) => each.closest(ROW) === row) ??
  usable(row, '[data-takes-focus]').find((each) => each.closest(ROW) === row) ??
  usable(row, FOCUSABLE)[0] ??
  null;

const usable = (within: Element, which: string): HTMLElement[] =>
  [...within.querySelectorAll<HTMLElement>(which)].filter(canTakeFocus);

/** Whether a control shows and is not disabled. */
export const canTakeFocus = (each: HTMLElement): boolean => !each.matches(':disabled') && each.checkVisibility();

const hasFocus = (): boolean => {
  const active = document.activeElement;
  return active !== null && active !== document.body && !active.matches(':disabled');
};
