/** What is wrong with a file, as a sentence for the person: where it is, and what to do. */
export class ScanFault extends Error {}

/** The person stopped the reading. */
export class ScanStopped extends Error {}
