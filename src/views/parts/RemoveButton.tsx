import type { ComponentProps } from 'react';
import { handFocusOn } from './handFocusOn';

interface RemoveButtonProps extends Omit<ComponentProps<'button'>, 'type' | 'onClick'> {
  onRemove(): void;
  /** which of a row's controls it is, where a row can leave its list in more ways than one */
  as?: string;
}

/** Takes its row out of a list and hands the focus on to what is left. */
export const RemoveButton = ({ onRemove, as = '', ...button }: RemoveButtonProps) => (
  <button
    type="button"
    data-removes={as}
    {...button}
    onClick={({ currentTarget }) => handFocusOn(currentTarget, onRemove)}
  />
);
