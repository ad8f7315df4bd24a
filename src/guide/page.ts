/** A page of the guide as it was set when the app was built. */
export interface Page {
  title: string;
  /** what is in it, in the order in which it stands */
  contents: { id: string; words: string; level: 2 | 3 }[];
  /** markup of our own text */
  html: string;
}
