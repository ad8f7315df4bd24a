import { useId } from 'react';
import { type EntryKind, type FieldPath, useDraft } from '../../job';
import { EntryField } from './EntryField';
import { useEntry } from './useEntry';
import { useLengths } from './useLengths';

export interface NumberFieldProps {
  path: FieldPath;
  /** what the field is, for those who do not see where it stands */
  label: string;
  kind?: EntryKind;
  /** unit of a `number`, written after it */
  unit?: string;
  optional?: boolean;
  /** what applies while an optional field is empty */
  placeholder?: string;
  labelShown?: boolean;
}

const slopeMark = { in: 'in/ft', mm: 'mm/m' };

/** A field for a length, an angle or a plain number. */
export function NumberField({
  path,
  label,
  kind = 'length',
  unit,
  optional = false,
  placeholder,
  labelShown = false,
}: NumberFieldProps) {
  const id = useId();
  const entry = useEntry(path, kind, optional);
  const lengths = useLengths();
  const currency = useDraft(({ draft }) => draft.job.prices.currency);
  const marks: Record<EntryKind, string | undefined> = {
    length: lengths.unit,
    degrees: '°',
    slope: slopeMark[lengths.unit],
    money: currency,
    'money-by-length': `${currency}/${lengths.unit === 'in' ? 'ft' : 'm'}`,
    percent: '%',
    number: unit,
    // Their labels say the degree.
    temperature: undefined,
    'temperature-change': undefined,
    'per-degree': undefined,
  };
  return (
    <EntryField
      id={id}
      entry={entry}
      label={label}
      labelShown={labelShown}
      value={entry.text}
      placeholder={placeholder}
      mark={marks[kind]}
      onText={entry.onText}
    />
  );
}
