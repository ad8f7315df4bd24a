const MB = 1024 * 1024;

/** What a file of jobs may hold at most; more would not fit into the memory of a phone. */
export const limits = {
  /** the file itself, bytes */
  file: 300 * MB,
  /** all that is in it, unpacked, bytes */
  unpacked: 320 * MB,
  /** one job or the table of contents, bytes */
  text: 4 * MB,
  /** one photo, bytes */
  photo: 12 * MB,
  jobs: 500,
  photos: 5000,
  /** parts of any kind */
  parts: 6500,
  /** texts of one job that are not understood, and the characters of one */
  typed: 5000,
  typedLength: 2000,
} as const;

export const megabytes = (bytes: number): string => `${Math.ceil(bytes / MB)} MB`;
