import { type ScanUnit, unitMillimetres } from '../guess';

/** The unit in mm that the name of a column gives, as in "x [mm]" or "Z_m"; null where it gives none. */
export function unitInNames(names: readonly string[] | null): number | null {
  for (const name of names ?? []) {
    const unit = /^[xyz][ _]?[([]?(mm|cm|m|in|ft)[)\]]?$/i.exec(name)?.[1];
    if (unit) return unitMillimetres[unit.toLowerCase() as ScanUnit];
  }
  return null;
}
