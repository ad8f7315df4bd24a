import type { ReactNode } from 'react';

/** A sign drawn in the colour and about the height of the words beside it. The words or a label say what it means. */
function Icon({ children }: { children: ReactNode }) {
  return (
    <svg
      width="1.125em"
      height="1.125em"
      viewBox="0 0 20 20"
      fill="none"
      stroke="currentColor"
      strokeWidth="2.2"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
      focusable="false"
    >
      {children}
    </svg>
  );
}

const icon = (path: string) => () => (
  <Icon>
    <path d={path} />
  </Icon>
);

export const ChevronDown = icon('M4.5 7.5 10 13l5.5-5.5');
export const Cross = icon('M5 5l10 10M15 5 5 15');
export const Plus = icon('M10 4v12M4 10h12');
export const Minus = icon('M4 10h12');
export const Tick = icon('M4 10.5 8.5 15 16 5.5');
export const Undo = icon('M7 3.5 3 7.5l4 4M3.5 7.5H12a4.5 4.5 0 0 1 0 9H7');
export const Redo = icon('M13 3.5l4 4-4 4M16.5 7.5H8a4.5 4.5 0 0 0 0 9h5');
export const Swap = icon('M6.5 3.5 3 7l3.5 3.5M3.5 7H16M13.5 9.5 17 13l-3.5 3.5M16.5 13H4');
export const More = icon('M4 10h.01M10 10h.01M16 10h.01');
