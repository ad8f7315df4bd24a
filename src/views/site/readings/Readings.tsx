import { useEffect, useState } from 'react';
import type { ReadingKind } from '../../../core';
import { useDraft, useSession } from '../../../job';
import { Card } from '../../parts';
import { AddReading } from './AddReading';
import { Advice } from './Advice';
import { KindGroup } from './KindGroup';
import { kinds } from './kinds';

/** The record of all readings, by kind, with those that look wrong above them. */
export function Readings() {
  const readings = useDraft(({ draft }) => draft.job.readings);
  const { addReading } = useSession().draft.getState();
  const [open, setOpen] = useState<Partial<Record<ReadingKind, boolean>>>({});
  const [sought, setSought] = useState<string | null>(null);
  const present = kinds.filter((kind) => readings.some((reading) => reading.kind === kind));
  const isOpen = (kind: ReadingKind) => open[kind] ?? kind === present[0];

  const show = (id: string, kind: ReadingKind) => {
    setOpen((before) => ({ ...before, [kind]: true }));
    setSought(id);
  };
  useEffect(() => {
    if (sought === null) return;
    const row = document.querySelector(`[data-reading="${CSS.escape(sought)}"]`);
    row?.scrollIntoView({ block: 'center' });
    row?.querySelector<HTMLInputElement>('input')?.focus({ preventScroll: true });
    setSought(null);
  }, [sought]);

  const add = (kind: ReadingKind) => show(addReading(kind), kind);
  return (
    <Card title="Record" rows aside={<AddReading onAdd={add} />}>
      <Advice onShow={show} />
      {readings.length === 0 && (
        <p>
          No reading yet. Draw a level line and a plumb line on the back wall, then start with the plumb line to each
          corner.
        </p>
      )}
      {present.map((kind) => (
        <KindGroup
          key={kind}
          kind={kind}
          readings={readings.filter((reading) => reading.kind === kind)}
          open={isOpen(kind)}
          onOpen={(opened) => setOpen((before) => ({ ...before, [kind]: opened }))}
          onAdd={() => add(kind)}
        />
      ))}
    </Card>
  );
}
