import { DropdownMenu } from 'radix-ui';
import type { ComponentProps } from 'react';
import styles from './menu.module.css';

/** What a menu drops down, at the end of its button. */
export const MenuContent = (props: ComponentProps<typeof DropdownMenu.Content>) => (
  <DropdownMenu.Portal>
    <DropdownMenu.Content className={styles.menu} align="end" sideOffset={6} collisionPadding={8} {...props} />
  </DropdownMenu.Portal>
);

export const MenuItem = (props: ComponentProps<typeof DropdownMenu.Item>) => (
  <DropdownMenu.Item className={styles.item} {...props} />
);
