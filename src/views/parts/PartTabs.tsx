import { Tabs } from 'radix-ui';
import type { ReactNode } from 'react';
import styles from './part-tabs.module.css';

interface PartTabsProps<Name extends string> {
  /** what they are parts of */
  label: string;
  parts: readonly (readonly [Name, string])[];
  value: Name;
  onChoose: (part: Name) => void;
  className?: string;
  /** a `Tabs.Content` for each part */
  children: ReactNode;
}

/** The parts of a place, one of them in sight. */
export function PartTabs<Name extends string>({
  label,
  parts,
  value,
  onChoose,
  className,
  children,
}: PartTabsProps<Name>) {
  return (
    <Tabs.Root className={className} value={value} onValueChange={(chosen) => onChoose(chosen as Name)}>
      <Tabs.List className={styles.parts} aria-label={label}>
        {parts.map(([name, words]) => (
          <Tabs.Trigger key={name} value={name} className={styles.part}>
            {words}
          </Tabs.Trigger>
        ))}
      </Tabs.List>
      {children}
    </Tabs.Root>
  );
}
