/** Typographic signs and spellings of the same thing, in the order they are replaced. */
const SPELLINGS: [RegExp, string][] = [
  [/[‐‑‒–—−]/g, '-'],
  [/[⁄∕]/g, '/'],
  [/(\d),(?=\d)/g, '$1.'],
  [/[″“”„]|''|′′/g, '"'],
  [/[′‘’]/g, "'"],
  [/"/g, ' in'],
  [/'/g, ' ft '],
  [/\b(millimet(?:re|er)s?)\b/g, 'mm'],
  [/\b(centimet(?:re|er)s?)\b/g, 'cm'],
  [/\b(met(?:re|er)s?)\b/g, 'm'],
  [/\b(inch(?:es)?)\b/g, 'in'],
  [/\b(foot|feet)\b/g, 'ft'],
  [/(\d)(mm|cm|m|in|ft)\b/g, '$1 $2'],
  [/\bft\b\.?[ -]*/g, 'ft '],
  [/\bin\./g, 'in'],
  [/\s+/g, ' '],
];

/** Single signs for fractions, ½ … ⅞, and super- and subscript digits, decomposed by Unicode (NFKD). */
const FRACTION_SIGN = /(\d?)([¼-¾⅐-⅞↉]|[⁰¹²³⁴-⁹]+[⁄/∕][₀-₉]+)/g;

/** Lower-case ASCII with one spelling of each unit, sign and fraction. */
export function plainText(text: string): string {
  let plain = text.replace(
    FRACTION_SIGN,
    (_, before: string, fraction: string) => `${before}${before === '' ? '' : ' '}${fraction.normalize('NFKD')}`,
  );
  plain = plain.toLowerCase();
  for (const [pattern, spelling] of SPELLINGS) plain = plain.replace(pattern, spelling);
  return plain.trim();
}
