/** Digits after the decimal point of a currency (ISO 4217, as the engine knows it): 2 for dollars, 0 for yen. */
export const minorDigits = (currency: string): number =>
  new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;

/** An amount in minor units as it is read: `$1,234.50`. */
export function moneyText(amount: number, currency: string): string {
  const digits = minorDigits(currency);
  return new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay: 'narrowSymbol' }).format(
    amount / 10 ** digits,
  );
}

/** Minor units as they are edited: `1234.50`. */
export const editableMoney = (amount: number, currency: string): string => {
  const digits = minorDigits(currency);
  return (amount / 10 ** digits).toFixed(digits);
};

export type ParsedMoney = { ok: true; amount: number } | { ok: false; message: string };

/** Reads `1,234.50`, `1234,5`, `$ 20` as minor units, exactly. */
export function parseMoney(text: string, currency: string): ParsedMoney {
  const digits = minorDigits(currency);
  const plain = text.replace(/[\s\p{Sc}]|^[A-Z]{3}|[A-Z]{3}$/gu, '');
  const parts = /^(?<whole>\d{1,3}(?:,\d{3})+|\d*)(?:[.,](?<part>\d*))?$/.exec(plain)?.groups;
  const whole = parts?.whole?.replaceAll(',', '') ?? '';
  const part = parts?.part ?? '';
  if (parts === undefined || whole + part === '') {
    return {
      ok: false,
      message: `"${text.trim()}" is not an amount; write it like ${digits === 0 ? '1250' : '12.50'}`,
    };
  }
  if (part.length > digits) {
    return {
      ok: false,
      message:
        digits === 0
          ? `${currency} has no smaller coin; write a whole amount`
          : `${currency} has ${digits} decimals; leave out the rest`,
    };
  }
  return { ok: true, amount: Number(whole + part.padEnd(digits, '0')) };
}
