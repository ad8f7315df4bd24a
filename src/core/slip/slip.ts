/** Ways in which a person with a tape and a rule goes wrong (common practice, no source). */
export type SlipKind =
  | 'inch'
  | 'half-inch'
  | 'quarter-inch'
  | 'foot'
  | 'ten-centimetres'
  | 'centimetre'
  | 'fraction'
  | 'swapped-digits'
  | 'misread-digit'
  | 'tape-case'
  | 'sign'
  | 'unit'
  | 'supplement'
  | 'exchanged';

/** A slip that would explain a misread reading. */
export interface Slip {
  kind: SlipKind;
  /** in words that go after the two values: `off by a half inch` */
  words: string;
  /** what the reading was, had it been taken without the slip; its own unit */
  likely: number;
}
