import type { KeptJob } from '../keep';

/**
 * How a noted job stands to the kept one: `written`, it is the same; `newer`, it follows on the kept one; `apart`,
 * somebody else has written the job since.
 */
export type Standing = 'written' | 'newer' | 'apart';

export function standing(noted: KeptJob, kept: KeptJob | undefined): Standing {
  if (!kept) return 'newer';
  if (JSON.stringify(noted.draft) === JSON.stringify(kept.draft)) return 'written';
  return kept.revision <= noted.revision ? 'newer' : 'apart';
}
