import type { RawScan } from '../raw-scan';
import { type Extent, sizeOf } from './extent';

export type ScanUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** mm in each unit that a file may be in. */
export const unitMillimetres: Record<ScanUnit, number> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };

/** How large a scan of an alcove, perhaps with the room before it, is: its longest side, mm. */
const [smallest, largest] = [1000, 9000];
/** As scanners write: metres, then millimetres; inches before centimetres. */
const usual: readonly ScanUnit[] = ['m', 'mm', 'in', 'ft', 'cm'];

/** The unit that the file says, or in which the scan is as large as an alcove; the nearest to that where none fits. */
export function guessUnit({ unit }: Pick<RawScan, 'unit'>, extent: Extent): ScanUnit {
  const told = usual.find((each) => unitMillimetres[each] === unit);
  if (told) return told;
  const longest = Math.max(...sizeOf(extent));
  const fits = usual.find((each) => {
    const mm = longest * unitMillimetres[each];
    return mm >= smallest && mm <= largest;
  });
  if (fits) return fits;
  const middle = Math.sqrt(smallest * largest);
  const off = (each: ScanUnit) => Math.abs(Math.log((longest * unitMillimetres[each]) / middle));
  return usual.toSorted((a, b) => off(a) - off(b))[0]!;
}
