import { unzipSync } from 'fflate';
import { limits, megabytes } from './limits';

export type Opened = { ok: true; parts: Map<string, Uint8Array<ArrayBuffer>> } | { ok: false; message: string };

class Refusal extends Error {}

export const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;

/**
 * The parts of a zip file by name. Sizes are refused by what the file says of itself, before anything is unpacked, and
 * no part unpacks to more than it says. Nothing is ever written to a path.
 */
export function openZip(bytes: Uint8Array): Opened {
  const seen = new Set<string>();
  let unpacked = 0;
  try {
    const parts = unzipSync(bytes, {
      filter: ({ name, originalSize, compression }) => {
        if (seen.size >= limits.parts) throw new Refusal(`holds more than ${limits.parts} parts`);
        if (seen.has(name)) throw new Refusal(`holds “${shown(name)}” twice`);
        seen.add(name);
        if (/^[/\\]|\\|^[a-z]:|(^|\/)\.\.(\/|$)|\p{Cc}/iu.test(name))
          throw new Refusal(`has a part named “${shown(name)}”, which points out of the file`);
        if (name.endsWith('/')) return false;
        if (compression !== 0 && compression !== 8) throw new Refusal(`has a part packed in a way not read here`);
        const most = name.startsWith('photos/') ? limits.photo : limits.text;
        if (originalSize > most)
          throw new Refusal(
            `has a part “${shown(name)}” of ${megabytes(originalSize)}; ${megabytes(most)} is the most`,
          );
        unpacked += originalSize;
        if (unpacked > limits.unpacked) throw new Refusal(`unpacks to more than ${megabytes(limits.unpacked)}`);
        return true;
      },
    });
    return { ok: true, parts: new Map(Object.entries(parts) as [string, Uint8Array<ArrayBuffer>][]) };
  } catch (error) {
    return {
      ok: false,
      message:
        error instanceof Refusal
          ? `The file ${error.message}. It was not written by this app, or was changed since.`
          : 'The file is not a whole zip file. It may have been cut short on its way here: copy it once more.',
    };
  }
}

const shown = (name: string) => (name.length > 60 ? `${name.slice(0, 60)}…` : name).replace(/\p{Cc}/gu, '?');
