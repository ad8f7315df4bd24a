import type { CSSProperties } from 'react';
import type { Finish } from '../../core';
import styles from './client.module.css';

/** A small likeness of a finish. */
export function Swatch({ finish }: { finish: Finish }) {
  const { look, colour, second } = finish;
  const over: Record<Finish['look'], string | undefined> = {
    plain: undefined,
    stone: `linear-gradient(118deg, transparent 46%, ${second} 49%, transparent 53%), linear-gradient(160deg, transparent 68%, ${second}88 70%, transparent 73%)`,
    ribbed: `repeating-linear-gradient(90deg, ${second} 0 1px, ${colour} 3px 5px, ${second} 7px)`,
    'large-format': `linear-gradient(90deg, transparent 48%, ${second} 48% 52%, transparent 52%), linear-gradient(transparent 47%, ${second} 47% 53%, transparent 53%)`,
  };
  const style: CSSProperties = { backgroundColor: colour, backgroundImage: over[look] };
  return <span className={styles.swatch} style={style} aria-hidden="true" />;
}
