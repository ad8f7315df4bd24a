import fc from 'fast-check';

type Keyed = Record<string | number, unknown>;

/** Values that readers of files fall over. */
const hostile: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(null, true, '', ' ', 'NaN', '1e999', [], {}, [[]], 0, -0, 1e308, -1e308, 5e-324, 2 ** 53),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer({ min: -5000, max: 5000 }),
  fc.constantFrom('<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '=1+1', '\u0000', '\u202e', '😀'),
  fc.constantFrom('left', 'right', 'back', 'panel', 'wall', 'plumb', 'span', 'tub'),
  fc.string({ maxLength: 12, unit: 'binary' }),
  fc.constant('x').map((letter) => letter.repeat(5000)),
  fc.integer({ min: 1, max: 200 }).map((depth) => nested(depth)),
);

function nested(depth: number): unknown {
  let value: unknown = 1;
  for (let i = 0; i < depth; i++) value = [value];
  return value;
}

const hostileKeys = fc.constantFrom('__proto__', 'constructor', 'toString', 'length', '', 'x', 'id', 'kind', 'value');

interface Change {
  /** which of the places in the value */
  at: number;
  how: 'replace' | 'drop' | 'double' | 'add' | 'swap';
  value: unknown;
  key: string;
}

const change: fc.Arbitrary<Change> = fc.record({
  at: fc.nat(100_000),
  how: fc.constantFrom('replace', 'replace', 'replace', 'drop', 'double', 'add', 'swap'),
  value: hostile,
  key: hostileKeys,
});

/** JSON values made from one of the samples by a few changes at any of their places. */
export const mutatedValue = (samples: readonly unknown[]): fc.Arbitrary<unknown> =>
  fc
    .tuple(fc.constantFrom(...samples.map((sample) => JSON.stringify(sample))), fc.array(change, { maxLength: 4 }))
    .map(([sample, changes]) => {
      const root: Keyed = { value: JSON.parse(sample) };
      for (const each of changes) apply(root, each);
      return root.value;
    });

function apply(root: Keyed, { at, how, value, key }: Change): void {
  const places = placesIn(root);
  const place = places[at % places.length];
  const other = places[(at * 7 + 3) % places.length];
  // Everything has been dropped.
  if (!place || !other) return;
  const held = place.of[place.key];
  if (how === 'replace') place.of[place.key] = value;
  else if (how === 'swap') place.of[place.key] = structuredClone(other.of[other.key]);
  else if (how === 'drop') {
    if (Array.isArray(place.of)) place.of.splice(Number(place.key), 1);
    else delete place.of[place.key];
  } else if (how === 'double') {
    if (Array.isArray(place.of)) place.of.splice(Number(place.key), 0, structuredClone(held));
  } else if (held !== null && typeof held === 'object' && !Array.isArray(held)) {
    Object.defineProperty(held, key, { value, enumerable: true, configurable: true, writable: true });
  }
}

function placesIn(of: Keyed): { of: Keyed; key: string }[] {
  const places: { of: Keyed; key: string }[] = [];
  const waiting = [of];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const key of Object.keys(at)) {
      places.push({ of: at, key });
      const held = at[key];
      if (held !== null && typeof held === 'object') waiting.push(held as Keyed);
    }
  }
  return places;
}

/** Texts made from one of the samples by changing, dropping, doubling and cutting off stretches of it. */
export const mutatedText = (samples: readonly string[], bits: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...samples),
      fc.array(
        fc.record({
          at: fc.double({ min: 0, max: 1, noNaN: true }),
          length: fc.oneof(fc.nat(4), fc.nat(400)),
          how: fc.constantFrom('drop', 'double', 'put', 'put', 'cut'),
          text: fc.oneof(fc.constantFrom(...bits), fc.string({ maxLength: 6, unit: 'binary' })),
        }),
        { minLength: 1, maxLength: 5 },
      ),
    )
    .map(([sample, changes]) =>
      changes.reduce((text, { at, length, how, text: put }) => {
        const start = Math.floor(at * text.length);
        const [before, stretch, after] = [
          text.slice(0, start),
          text.slice(start, start + length),
          text.slice(start + length),
        ];
        if (how === 'cut') return before;
        return before + (how === 'put' ? put : how === 'double' ? stretch + stretch : '') + after;
      }, sample),
    );

/** Bytes made from one of the samples by a few changes. */
export const mutatedBytes = (samples: readonly Uint8Array[]): fc.Arbitrary<Uint8Array<ArrayBuffer>> =>
  fc
    .tuple(
      fc.constantFrom(...samples),
      fc.array(
        fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.nat(255), fc.constantFrom('set', 'set', 'cut', 'drop')),
        {
          minLength: 1,
          maxLength: 6,
        },
      ),
    )
    .map(([sample, changes]) => {
      let bytes = new Uint8Array(sample);
      for (const [share, byte, how] of changes) {
        const at = Math.floor(share * bytes.length);
        if (how === 'cut') bytes = bytes.slice(0, at);
        else if (how === 'drop') bytes = new Uint8Array([...bytes.slice(0, at), ...bytes.slice(at + byte)]);
        else if (at < bytes.length) bytes[at] = byte;
      }
      return bytes;
    });
