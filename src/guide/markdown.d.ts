declare module '*.md' {
  export const page: import('./page').Page;
}
