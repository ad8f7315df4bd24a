import type { WallName } from '../job-file';
import type { AdhesiveLayout } from './adhesive';
import type { Joint } from './joint';
import type { Packs } from './packs';

/** A figure that a quantity was worked out from. */
export interface MaterialInput {
  label: string;
  value: number;
  unit: 'mm' | 'mm²' | 'mL' | 'share' | 'pieces';
}

/** One thing to buy, with the rule that counts it. */
export interface MaterialLine {
  id: string;
  label: string;
  quantity: number;
  unit: 'mL' | 'mm' | 'pieces';
  /** in words, with its source or 'common practice, no source' */
  rule: string;
  inputs: MaterialInput[];
  packs: Packs;
}

export interface Materials {
  lines: MaterialLine[];
  joints: (Joint & { /** mL, tooling loss included */ volume: number })[];
  adhesive: Record<WallName, AdhesiveLayout>;
}
