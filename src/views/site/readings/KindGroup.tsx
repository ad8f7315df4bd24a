import { useId } from 'react';
import type { ReadingKind } from '../../../core';
import { type DraftReading, useSessionState } from '../../../job';
import { ChevronDown, ChevronRight, Plus } from '../../parts';
import styles from '../lists.module.css';
import { kindWords } from './kinds';
import { ReadingRow } from './ReadingRow';

interface KindGroupProps {
  kind: ReadingKind;
  readings: readonly DraftReading[];
  open: boolean;
  onOpen: (open: boolean) => void;
  onAdd: () => void;
}

/** The readings of one kind, folded away or not. */
export function KindGroup({ kind, readings, open, onOpen, onAdd }: KindGroupProps) {
  const id = useId();
  const { name, how } = kindWords[kind];
  const doubted = useSessionState(
    ({ result }) =>
      readings.filter((reading) =>
        result?.adjustment.readings.some(
          (report) => report.flag === 're-measure' && report.id.split('/')[0] === reading.id,
        ),
      ).length,
  );
  const waiting = useSessionState(
    ({ setAside }) => readings.filter(({ id: of }) => setAside.some((entry) => entry.id === of)).length,
  );
  const out = readings.filter((reading) => reading.off).length;
  const counts = [
    `${readings.length}`,
    doubted > 0 && `${doubted} to re-measure`,
    waiting > 0 && `${waiting} unfinished`,
    out > 0 && `${out} left out`,
  ].filter(Boolean);
  return (
    <section className={styles.group} aria-label={name} data-row data-rows>
      <div className={styles.groupHead}>
        <h3 className={styles.groupTitle}>
          <button
            type="button"
            className={styles.fold}
            aria-expanded={open}
            aria-controls={id}
            onClick={() => onOpen(!open)}
          >
            <span aria-hidden="true" className={styles.foldSign}>
              {open ? <ChevronDown /> : <ChevronRight />}
            </span>
            <span>{name}</span>
            <span className={styles.count} data-doubted={doubted > 0 || undefined}>
              {counts.join(', ')}
            </span>
          </button>
        </h3>
        <button
          type="button"
          className={styles.another}
          data-adds
          aria-label={`Add: ${name.toLowerCase()}`}
          onClick={onAdd}
        >
          <Plus />
        </button>
      </div>
      <div id={id} hidden={!open}>
        {open && (
          <>
            <p className={styles.how}>{how}</p>
            <ul className={styles.list}>
              {readings.map((reading) => (
                <ReadingRow key={reading.id} reading={reading} />
              ))}
            </ul>
          </>
        )}
      </div>
    </section>
  );
}
