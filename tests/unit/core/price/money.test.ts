import { describe, expect, it } from 'vitest';
import { editableMoney, minorDigits, moneyText, parseMoney } from '../../../../src/core/price';

describe('parseMoney', () => {
  it.each([
    ['12.50', 'USD', 1250],
    ['12,5', 'EUR', 1250],
    ['1,234.5', 'USD', 123450],
    ['1,234', 'USD', 123400],
    ['$ 20', 'USD', 2000],
    ['20 EUR', 'EUR', 2000],
    ['.99', 'USD', 99],
    ['0', 'USD', 0],
    ['1250', 'JPY', 1250],
    ['0.29', 'USD', 29],
    ['10000000', 'USD', 1_000_000_000],
  ])('reads %s %s as %d minor units', (text, currency, amount) => {
    expect(parseMoney(text, currency)).toEqual({ ok: true, amount });
  });

  it.each([
    ['', 'USD'],
    ['.', 'USD'],
    ['-5', 'USD'],
    ['twelve', 'USD'],
    ['1.2.3', 'USD'],
    ['12.345', 'USD'],
    ['12.5', 'JPY'],
    ['1e3', 'USD'],
  ])('refuses %j %s with words that go on from the name of a field', (text, currency) => {
    const parsed = parseMoney(text, currency);
    expect(!parsed.ok && parsed.message).toMatch(/write it like|leave out the rest|whole amount/);
  });

  it('reads back what it shows to edit', () => {
    for (const currency of ['USD', 'JPY', 'KWD']) {
      for (const amount of [0, 1, 99, 100, 123456]) {
        expect(parseMoney(editableMoney(amount, currency), currency)).toEqual({ ok: true, amount });
      }
    }
  });
});

describe('moneyText', () => {
  it('writes the currency and its decimals', () => {
    expect(moneyText(123450, 'USD')).toBe('$1,234.50');
    expect(moneyText(5, 'EUR')).toBe('€0.05');
    expect(moneyText(1250, 'JPY')).toBe('¥1,250');
  });

  it('knows the decimals of ISO 4217', () => {
    expect(['USD', 'JPY', 'KWD', 'XYZ'].map(minorDigits)).toEqual([2, 0, 3, 2]);
  });
});
