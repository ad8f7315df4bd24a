import { type FocusEvent, useState } from 'react';
import { flushSync } from 'react-dom';
import { editableMoney, priceSold, soldLength, temperatureShown } from '../../core';
import {
  type EntryKind,
  type FieldPath,
  fieldFault,
  fieldKey,
  isTemperature,
  slopeRun,
  useDraft,
  useSession,
  valueAt,
} from '../../job';
import { useLengths } from './useLengths';

export interface EntryState {
  /** what the field shows */
  text: string;
  /** what is wrong with it, once it is left */
  fault: string | null;
  /** Shows the text to edit, all of it selected, so that what is typed replaces it. */
  onEnter(event: FocusEvent<HTMLInputElement>): void;
  onText(text: string): void;
  onLeave(): void;
  /** Turns the value over to the other side of its line. */
  onTurn(): void;
}

/** Ties a field of the job to an input. An optional field may be left empty. */
export function useEntry(path: FieldPath, kind: EntryKind, optional = false): EntryState {
  const lengths = useLengths();
  const key = fieldKey(path);
  const value = useDraft(({ draft }) => valueAt(draft.job, path)) as number | undefined;
  const currency = useDraft(({ draft }) => draft.job.prices.currency);
  const unread = useDraft(({ draft }) => draft.typed[key]);
  const fault = useDraft(({ draft, typing }) => {
    const text = draft.typed[key];
    return text === undefined || typing === key ? null : fieldFault(draft, path, kind, text);
  });
  const { type, choose, leave } = useSession().draft.getState();
  const [inHand, setInHand] = useState<string | null>(null);
  const written = (length: (mm: number) => string, figures: number): string => {
    if (value === undefined) return '';
    if (isTemperature(kind)) return String(Number(temperatureShown(kind, value, lengths.unit).toPrecision(figures)));
    switch (kind) {
      case 'length':
        return length(value);
      case 'slope':
        return length(value * slopeRun(lengths.unit));
      case 'money':
        return editableMoney(value, currency);
      case 'money-by-length':
        return editableMoney(priceSold(value, soldLength(lengths.unit)), currency);
      case 'percent':
        return String(Number((100 * value).toPrecision(12)));
      default:
        return String(value);
    }
  };
  return {
    text: inHand ?? unread ?? written(lengths.resting, 6),
    fault,
    onEnter: ({ currentTarget }) => {
      // The browser selects on focus; a text that changes after that would lose the selection.
      flushSync(() => setInHand(unread ?? written(lengths.editing, 12)));
      currentTarget.select();
    },
    onText: (text) => {
      setInHand(text);
      if (optional && text.trim() === '') choose(path, undefined);
      else type(path, kind, text);
    },
    onLeave: () => {
      setInHand(null);
      leave();
    },
    onTurn: () => {
      if (unread === undefined && value !== undefined) choose(path, -value);
      else type(path, kind, withoutMinus(unread ?? '') ?? `-${unread ?? ''}`);
      leave();
    },
  };
}

/** The text after its minus sign; null where it has none. */
export const withoutMinus = (text: string): string | null => /^\s*[-−–]\s*(.*)$/.exec(text)?.[1] ?? null;
