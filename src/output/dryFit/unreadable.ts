/** What keeps a template from being read back, as the end of a sentence. */
export class Unreadable extends Error {}
