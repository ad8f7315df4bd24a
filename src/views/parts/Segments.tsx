import { ToggleGroup } from 'radix-ui';
import styles from './parts.module.css';

interface SegmentsProps<T extends string> {
  label: string;
  value: T | null;
  choices: readonly (readonly [value: T, words: string])[];
  onChoose: (value: T) => void;
}

/** A row of buttons of which one holds. */
export function Segments<T extends string>({ label, value, choices, onChoose }: SegmentsProps<T>) {
  return (
    <ToggleGroup.Root
      type="single"
      className={styles.segments}
      aria-label={label}
      value={value ?? ''}
      onValueChange={(chosen) => chosen !== '' && onChoose(chosen as T)}
    >
      {choices.map(([choice, words]) => (
        <ToggleGroup.Item key={choice} value={choice} className={styles.segment}>
          {words}
        </ToggleGroup.Item>
      ))}
    </ToggleGroup.Root>
  );
}
