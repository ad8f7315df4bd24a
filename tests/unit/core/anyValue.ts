import fc from 'fast-check';
import type { z } from 'zod';

interface Check {
  _zod: {
    def: { check: string; value?: number; minimum?: number; maximum?: number; inclusive?: boolean; format?: string };
  };
}
type Def = { type: string; checks?: Check[] } & Record<string, unknown>;

const LONGEST = 5;

/**
 * Any value that a schema takes by its types and ranges, bounds included; what its refinements ask beyond that is left
 * to the caller.
 * @param longest most entries of a list at a path, where it is not a few
 */
export function anyValue(schema: z.ZodType, longest: Record<string, number> = {}, path = ''): fc.Arbitrary<unknown> {
  const def = (schema as unknown as { _zod: { def: Def } })._zod.def;
  const inner = (of: unknown, key = ''): fc.Arbitrary<unknown> => anyValue(of as z.ZodType, longest, path + key);
  switch (def.type) {
    case 'object': {
      const shape = def.shape as Record<string, z.ZodType>;
      const optional = (each: z.ZodType): boolean => each.safeParse(undefined).success;
      return fc.record(Object.fromEntries(Object.entries(shape).map(([key, each]) => [key, inner(each, `.${key}`)])), {
        requiredKeys: Object.keys(shape).filter((key) => !optional(shape[key]!)),
      });
    }
    case 'array': {
      const [least, most] = [limit(def, 'minimum') ?? 0, longest[path] ?? LONGEST];
      return fc.array(inner(def.element), {
        minLength: least,
        maxLength: Math.min(Math.max(least, most), limit(def, 'maximum') ?? most),
      });
    }
    case 'tuple':
      return fc.tuple(...(def.items as z.ZodType[]).map((each) => inner(each)));
    case 'optional':
    case 'default':
    case 'prefault':
      return inner(def.innerType);
    case 'nullable':
      return fc.option(inner(def.innerType));
    case 'union':
      return fc.oneof(...(def.options as z.ZodType[]).map((each) => inner(each)));
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries as Record<string, string>));
    case 'literal':
      return fc.constantFrom(...(def.values as unknown[]));
    case 'boolean':
      return fc.boolean();
    case 'string':
      return fc.string({ minLength: 1, maxLength: 12 });
    case 'number':
      return anyNumber(def);
    default:
      throw new Error(`no arbitrary for ${def.type} at ${path}`);
  }
}

const limit = (def: Def, side: 'minimum' | 'maximum'): number | undefined =>
  def.checks?.map((check) => check._zod.def[side]).find((value) => value !== undefined);

function anyNumber(def: Def): fc.Arbitrary<number> {
  const checks = (def.checks ?? []).map((check) => check._zod.def);
  const bound = (kind: string): { value: number; inclusive: boolean } => {
    const found = checks.find(({ check }) => check === kind);
    if (found === undefined) throw new Error(`a number without ${kind}`);
    return found as { value: number; inclusive: boolean };
  };
  const [low, high] = [bound('greater_than'), bound('less_than')];
  if (checks.some(({ check }) => check === 'number_format')) return fc.integer({ min: low.value, max: high.value });
  const ends = [low, high].filter(({ inclusive }) => inclusive).map(({ value }) => value);
  const within = fc.double({
    min: low.value,
    max: high.value,
    minExcluded: !low.inclusive,
    maxExcluded: !high.inclusive,
    noNaN: true,
  });
  // fast-check prefers numbers near zero; walls are made of numbers of every size
  const even = fc.nat(2 ** 20).map((n) => low.value + ((high.value - low.value) * (n + 0.5)) / (2 ** 20 + 1));
  return fc.oneof(
    { weight: 4, arbitrary: even },
    { weight: 1, arbitrary: within },
    ...(ends.length > 0 ? [{ weight: 1, arbitrary: fc.constantFrom(...ends) }] : []),
  );
}
