import type { PointStore } from './point-store';
import type { RawScan } from './raw-scan';

type Given = Pick<RawScan, 'format'> &
  Partial<Pick<RawScan, 'mesh' | 'unit' | 'up' | 'table'>> & {
    store: PointStore;
    /** what could not be read before it came to the store */
    unread?: number;
  };

/** A scan of the points of a store, which is emptied. */
export function rawScanOf({
  format,
  store,
  mesh = null,
  unit = null,
  up = null,
  table = null,
  unread = 0,
}: Given): RawScan {
  const { origin, seen, cube, atZero } = store;
  const unreadInAll = store.unread + unread;
  return {
    format,
    origin: origin ?? [0, 0, 0],
    mesh,
    unit,
    up,
    table,
    seen,
    cube,
    atZero,
    unread: unreadInAll,
    positions: store.take(),
  };
}
