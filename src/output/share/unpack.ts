import { Inflate } from 'fflate';

const STEP = 256;

/** The bytes that deflated bytes hold; null where they are none or hold more than `most`. */
export function inflated(packed: Uint8Array, dictionary: Uint8Array, most: number): Uint8Array | null {
  const parts: Uint8Array[] = [];
  let [size, finished] = [0, false];
  const inflate = new Inflate({ dictionary }, (part, final) => {
    parts.push(part.slice());
    size += part.length;
    finished = final;
  });
  try {
    for (let at = 0; at < packed.length; at += STEP) {
      if (finished || size > most) return null;
      inflate.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
    }
  } catch {
    return null;
  }
  if (!finished || size > most) return null;
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
