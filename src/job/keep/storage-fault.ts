/**
 * Why storage does not do what it should. `blocked`: the browser gives none, as in some private windows; `full`: no room;
 * `newer`: written by a newer version of the app, or taken over by one; `held`: another tab holds an old version open.
 */
export type StorageTrouble = 'blocked' | 'full' | 'newer' | 'held' | 'failed';

export class StorageFault extends Error {
  constructor(
    readonly trouble: StorageTrouble,
    cause?: unknown,
  ) {
    super(`storage: ${trouble}`, { cause });
  }

  static of(error: unknown): StorageFault {
    return error instanceof StorageFault ? error : new StorageFault(troubleOf(error), error);
  }
}

function troubleOf(error: unknown): StorageTrouble {
  if (error instanceof ReferenceError || error instanceof TypeError) return 'blocked';
  switch ((error as { name?: string } | null)?.name) {
    case 'QuotaExceededError':
      return 'full';
    case 'VersionError':
      return 'newer';
    case 'InvalidStateError':
    case 'SecurityError':
    case 'NotAllowedError':
      return 'blocked';
    default:
      return 'failed';
  }
}
