import type { KeyboardEvent, PointerEvent, RefObject } from 'react';
import type { HandleTrack } from './HandleProjector';
import styles from './heat.module.css';
import type { Section } from './section';

interface SectionHandleProps {
  section: Section;
  /** what it is, and where it stands, in words */
  label: string;
  valueText: string;
  element: RefObject<HTMLDivElement | null>;
  track: RefObject<HandleTrack | null>;
  onMove: (share: number) => void;
}

const UP_AND_DOWN = 'M10 2.5v15M6.5 6 10 2.5 13.5 6M6.5 14l3.5 3.5 3.5-3.5';
const SIDEWAYS = 'M2.5 10h15M6 6.5 2.5 10 6 13.5M14 6.5l3.5 3.5-3.5 3.5';

const STEP = 0.01;
const LEAP = 0.1;

const clamped = (share: number): number => Math.min(1, Math.max(0, share));

/** The handle that a section is dragged by: pointer, touch and arrow keys. */
export function SectionHandle({ section, label, valueText, element, track, onMove }: SectionHandleProps) {
  const { cut, share } = section;
  const drag = (event: PointerEvent<HTMLDivElement>) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const frame = event.currentTarget.parentElement?.getBoundingClientRect();
    if (frame && track.current) onMove(track.current.nearest(event.clientX - frame.left, event.clientY - frame.top));
  };
  const press = (event: KeyboardEvent) => {
    const to = keyed(event.key, share);
    if (to === null) return;
    event.preventDefault();
    onMove(clamped(to));
  };
  return (
    <div
      ref={element}
      role="slider"
      tabIndex={0}
      className={styles.handle}
      data-cut={cut}
      aria-label={label}
      aria-orientation={cut === 'level' ? 'vertical' : 'horizontal'}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(100 * share)}
      aria-valuetext={valueText}
      onKeyDown={press}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={drag}
    >
      <svg width="22" height="22" viewBox="0 0 20 20" aria-hidden="true" focusable="false">
        <path d={cut === 'level' ? UP_AND_DOWN : SIDEWAYS} fill="none" stroke="currentColor" strokeWidth="2.2" />
      </svg>
    </div>
  );
}

function keyed(key: string, share: number): number | null {
  switch (key) {
    case 'ArrowUp':
    case 'ArrowRight':
      return share + STEP;
    case 'ArrowDown':
    case 'ArrowLeft':
      return share - STEP;
    case 'PageUp':
      return share + LEAP;
    case 'PageDown':
      return share - LEAP;
    case 'Home':
      return 0;
    case 'End':
      return 1;
    default:
      return null;
  }
}
