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

export const ArrowLeft = icon('M16.5 10h-13M8.5 5l-5 5 5 5');
export const ArrowRight = icon('M3.5 10h13M11.5 5l5 5-5 5');
export const Attention = icon('M10 3.5v8.5M10 16.3h.01');
export const ChevronDown = icon('M4.5 7.5 10 13l5.5-5.5');
export const ChevronRight = icon('M7.5 4.5 13 10l-5.5 5.5');
export const ChevronUp = icon('M4.5 12.5 10 7l5.5 5.5');
export const Cross = icon('M5 5l10 10M15 5 5 15');
export const Info = icon('M10 9v7.5M10 4h.01');
export const Keyboard = icon('M2.5 5h15v10h-15zM6 8.5h.01M10 8.5h.01M14 8.5h.01M6.5 12h7');
export const Question = icon('M7 7.5a3 3 0 1 1 4.6 2.5c-1 .7-1.6 1.2-1.6 2.5M10 16h.01');
export const Plus = icon('M10 4v12M4 10h12');
export const Minus = icon('M4 10h12');
export const Tick = icon('M4 10.5 8.5 15 16 5.5');
export const Undo = icon('M7 3.5 3 7.5l4 4M3.5 7.5H12a4.5 4.5 0 0 1 0 9H7');
export const Redo = icon('M13 3.5l4 4-4 4M16.5 7.5H8a4.5 4.5 0 0 0 0 9h5');
export const Rubout = icon('M7 4.5h10.5v11H7L2.5 10zM10 8l4 4M14 8l-4 4');
export const Swap = icon('M6.5 3.5 3 7l3.5 3.5M3.5 7H16M13.5 9.5 17 13l-3.5 3.5M16.5 13H4');
export const More = icon('M4 10h.01M10 10h.01M16 10h.01');
export const Warning = icon('M10 3.5 17.5 16.5h-15zM10 8.5v3M10 14h.01');
export const Wave = icon('M2.5 10c2.5-5 5-5 7.5 0s5 5 7.5 0');
