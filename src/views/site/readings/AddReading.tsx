import { DropdownMenu } from 'radix-ui';
import type { ReadingKind } from '../../../core';
import { Plus } from '../../parts';
import styles from '../lists.module.css';
import { kinds, kindWords } from './kinds';

/** A menu of the kinds of reading. */
export function AddReading({ onAdd }: { onAdd: (kind: ReadingKind) => void }) {
  return (
    <DropdownMenu.Root modal={false}>
      <DropdownMenu.Trigger className={styles.add} data-adds>
        <Plus /> Add a reading
      </DropdownMenu.Trigger>
      <DropdownMenu.Portal>
        <DropdownMenu.Content
          className={styles.kinds}
          align="end"
          sideOffset={6}
          collisionPadding={8}
          onCloseAutoFocus={(event) => event.preventDefault()}
        >
          {kinds.map((kind) => (
            <DropdownMenu.Item key={kind} className={styles.kind} onSelect={() => onAdd(kind)}>
              <strong>{kindWords[kind].name}</strong>
              <span>{kindWords[kind].how}</span>
            </DropdownMenu.Item>
          ))}
        </DropdownMenu.Content>
      </DropdownMenu.Portal>
    </DropdownMenu.Root>
  );
}
