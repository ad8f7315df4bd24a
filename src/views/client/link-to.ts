/** The whole address of this page with another part after `#`. */
export const linkTo = (hash: string): string => `${window.location.origin}${window.location.pathname}#${hash}`;
