import { type ReactNode, useState } from 'react';
import type { View } from '../../output';
import { Card, Minus, Plus, Segments } from '../parts';
import styles from './bench.module.css';
import type { Sketch } from './sketch';
import { Template } from './Template';

const closest = 4;

interface TemplateCardProps {
  title: string;
  statement: string;
  sketch: Sketch;
  view: View;
  views: readonly (readonly [View, string])[];
  onView: (view: View) => void;
  children: ReactNode;
}

/** A flat template with what sets how it is looked at. */
export function TemplateCard({ title, statement, sketch, view, views, onView, children }: TemplateCardProps) {
  const [closer, setCloser] = useState(1);
  return (
    <Card title={title}>
      <div className={styles.viewRow}>
        <Segments label="Side that is up" value={view} choices={views} onChoose={onView} />
        <p className={styles.statement}>
          <strong>{statement}</strong>
        </p>
        <span className={styles.zoom}>
          <button type="button" aria-label="Smaller" disabled={closer <= 1} onClick={() => setCloser(closer / 1.5)}>
            <Minus />
          </button>
          <button
            type="button"
            aria-label="Larger"
            disabled={closer >= closest}
            onClick={() => setCloser(closer * 1.5)}
          >
            <Plus />
          </button>
        </span>
      </div>
      <Template sketch={sketch} closer={closer} />
      {children}
    </Card>
  );
}
