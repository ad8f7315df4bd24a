const VULGAR: Record<string, string> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
  '↉': '0/3',
  '⅟': '1/',
};
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

const VULGAR_SIGN = new RegExp(`[${Object.keys(VULGAR).join('')}]`, 'g');
const DIGIT_THEN_RAISED = new RegExp(`(\\d)(?=[${Object.keys(VULGAR).join('')}${SUPERSCRIPTS}])`, 'g');
const VULGAR_THEN_DIGIT = new RegExp(`([${Object.keys(VULGAR).join('').replace('⅟', '')}])(?=\\d)`, 'g');
const STACKED = new RegExp(`([${SUPERSCRIPTS}]+|\\d+)\\s*/\\s*([${SUBSCRIPTS}]+|\\d+)`, 'g');

const plainDigits = (digits: string): string =>
  digits.replace(/\D/g, (digit) => String(Math.max(SUPERSCRIPTS.indexOf(digit), SUBSCRIPTS.indexOf(digit))));

/**
 * The same text in small ASCII letters, digits and marks as far as it stands for a length: one kind of quote, hyphen and
 * slash, fractions such as ½ and ¹³⁄₁₆ spelled out. A raised digit that is no fraction stays as it is.
 */
export function foldText(text: string): string {
  const lower = text.toLowerCase();
  if (/^[ -~]*$/.test(lower)) return lower.replace(/''/g, '"').replace(/`/g, "'");
  return lower
    .replace(/[\u200b-\u200f\u2060\u2066-\u2069\u202a-\u202e\ufeff]/g, '')
    .replace(/[\uff01-\uff5e]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/(\d)[\u00a0\u2009\u202f](?=\d{3}(?![\d/\u2044]))/g, '$1')
    .replace(/[\u2010-\u2015\u2212\ufe63]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[`\u00b4\u02b9\u02bc\u2018\u2019\u2032]/g, "'")
    .replace(/[\u02ba\u201c\u201d\u201e\u2033\u3003]|''/g, '"')
    .replace(DIGIT_THEN_RAISED, '$1 ')
    .replace(VULGAR_THEN_DIGIT, '$1 ')
    .replace(VULGAR_SIGN, (sign) => VULGAR[sign]!)
    .replace(STACKED, (_, above: string, below: string) => `${plainDigits(above)}/${plainDigits(below)}`);
}
