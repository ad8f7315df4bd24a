import { type ClipboardEvent, type KeyboardEvent, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { useDraft } from '../../../job';
import { Cross, Keyboard, Segments, useLengths } from '../../parts';
import { kindWords, WaitingLine } from '../readings';
import { type Active, fieldsOf, useEntryState, useSurvey, whereWords } from '../survey';
import styles from './entry.module.css';
import { Fields } from './Fields';
import { Keypad } from './Keypad';
import { MoreOf } from './MoreOf';
import { pasted } from './pasted';
import { press } from './press';
import { useFocusHandedBack } from './useFocusHandedBack';
import { useUnaimedKeys } from './useUnaimedKeys';

/** Where the number in hand is entered: what it is, what stands there, and the keys. */
export function Entry() {
  const { entry } = useSurvey();
  const active = useEntryState((state) => state.active);
  const finished = useEntryState((state) => state.finished);
  const input = useRef<HTMLInputElement>(null);
  useUnaimedKeys(entry, input);
  useEffect(() => () => entry.getState().close(), [entry]);
  useFocusHandedBack(active !== null);
  return (
    <>
      <p className="unseen" role="status">
        {finished ? 'All of the plan is read.' : ''}
      </p>
      {active && <Sheet active={active} input={input} />}
    </>
  );
}

interface SheetProps {
  active: Active;
  input: React.RefObject<HTMLInputElement | null>;
}

function Sheet({ active, input }: SheetProps) {
  const { entry } = useSurvey();
  const lengths = useLengths();
  const unit = useDraft(({ draft }) => draft.job.display);
  const [keyboard, setKeyboard] = useState(false);
  const id = useId();
  const { turn, place, field: index, text, fresh, fault } = active;
  const fields = fieldsOf(place);
  const field = fields[index];
  const { put, submit, skip, close, enterAll } = entry.getState();

  // A new number: the field is ready for keys, and the place in sight.
  useLayoutEffect(() => {
    void turn;
    input.current?.focus({ preventScroll: true });
    input.current?.select();
  }, [turn, input]);
  const key = place.key;
  useEffect(() => {
    document
      .querySelector(`[data-place="${CSS.escape(key)}"]`)
      ?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [key]);
  if (!field) return null;

  const negative = /^\s*[-−–]/.test(text);
  const shown = field.sides ? text.replace(/^\s*[-−–]\s*/, '') : text;
  const turnOver = () => put(press({ text, fresh }, 'sign', unit));
  const onText = (typed: string) => {
    const turned = field.sides && negative && !/^\s*[-−–]/.test(typed);
    put({ text: turned ? `-${typed}` : typed, fresh: false });
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') {
      event.preventDefault();
      submit();
    } else if (event.key === 'Escape') {
      event.preventDefault();
      close();
    }
  };
  const onPaste = (event: ClipboardEvent<HTMLInputElement>) => {
    const texts = pasted(event.clipboardData.getData('text'));
    if (texts.length < 2) return;
    event.preventDefault();
    enterAll(texts);
  };
  const title = place.list === 'fixtures' ? `Hole for ${place.where.id}` : kindWords[place.where.kind].name;
  const where = place.list === 'fixtures' ? `${place.where.wall} wall` : whereWords(place.where, lengths);
  const mark = field.kind === 'degrees' ? '°' : unit;
  return (
    <section className={styles.sheet} aria-label="Entry" data-testid="entry" data-where={JSON.stringify(place.where)}>
      <header className={styles.head}>
        <div className={styles.what}>
          <h2 className={styles.title}>{title}</h2>
          <p className={styles.where}>{where}</p>
        </div>
        <button
          type="button"
          className={styles.tool}
          aria-label="Speak or type the number"
          aria-pressed={keyboard}
          onClick={() => {
            setKeyboard(!keyboard);
            input.current?.blur();
            requestAnimationFrame(() => input.current?.focus());
          }}
        >
          <Keyboard />
        </button>
        <button type="button" className={styles.tool} aria-label="Close the entry" onClick={close}>
          <Cross />
        </button>
      </header>
      {fields.length > 1 && <Fields active={active} fields={fields} />}
      <div className={styles.value}>
        <label className="unseen" htmlFor={id}>
          {title}, {where}, {fieldWords(active, lengths.text)}
        </label>
        <span className={styles.box} data-fault={fault !== null || undefined}>
          <input
            ref={input}
            id={id}
            className={styles.input}
            value={shown}
            placeholder="–"
            inputMode={keyboard ? 'text' : 'none'}
            autoComplete="off"
            spellCheck={false}
            enterKeyHint="next"
            aria-invalid={fault !== null}
            aria-describedby={fault === null ? undefined : `${id}-fault`}
            onChange={({ target }) => onText(target.value)}
            onKeyDown={onKeyDown}
            onPaste={onPaste}
          />
          <span className={styles.unit} aria-hidden="true">
            {mark}
          </span>
        </span>
        {field.sides && (
          <Segments
            label="To which side"
            value={negative ? field.sides[1] : field.sides[0]}
            choices={field.sides.map((side) => [side, side] as const)}
            onChoose={(side) => (side === field.sides?.[1]) !== negative && turnOver()}
          />
        )}
      </div>
      {fault !== null && (
        <p id={`${id}-fault`} className={styles.fault} role="alert">
          {fault}. It stays as typed; put it right, or go on with another place.
        </p>
      )}
      {fault === null && place.id !== null && <WaitingLine list={place.list} id={place.id} />}
      <Keypad
        unit={field.kind === 'degrees' ? null : unit}
        text={text}
        onKey={(pressed) => put(press({ text, fresh }, pressed, unit))}
        onSkip={skip}
        onNext={submit}
      />
      <MoreOf active={active} />
    </section>
  );
}

function fieldWords({ place, field }: Active, text: (mm: number) => string): string {
  if (place.list === 'readings' && place.where.kind === 'plumb') {
    const height = place.where.gaps?.[field]?.height;
    if (height === undefined) return `gap ${field + 1}`;
    if (Math.abs(height) < 1) return 'gap at the level line';
    return `gap at ${text(Math.abs(height))} ${height > 0 ? 'above' : 'below'} the level line`;
  }
  return fieldsOf(place)[field]?.label ?? '';
}
