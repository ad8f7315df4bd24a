/** The numbers of a text that was pasted or sent in one go, one a line or between tabs. */
export const pasted = (text: string): string[] =>
  text
    .split(/[\r\n\t;]+/)
    .map((each) => each.trim())
    .filter((each) => each !== '');
