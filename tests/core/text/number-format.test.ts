import { describe, expect, test } from 'vitest';
import { CLDR_VERSION } from '../../../worker/core/text/build/read-format.ts';
import { printDate, printTimestamp } from '../../../worker/core/text/dates.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { FORMATS, PLURALS } from '../../../worker/core/text/generated/languages.ts';
import { LANGUAGES } from '../../../worker/core/text/languages.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';
import { printNumber, printSigned } from '../../../worker/core/text/numbers.ts';

const { de, en } = FORMATS;

/** As Unicode CLDR 48 has them for `de`. */
describe('German figures', () => {
  test.each([
    [1234.5, 1, '1.234,5'],
    [999.95, 1, '1.000,0'],
    [1234567.891, 2, '1.234.567,89'],
    [0.5, 3, '0,500'],
    [-12.5, 0, '\u221213'],
    [-0.04, 1, '0,0'],
  ])('%d to %d decimals is %s', (value, decimals, printed) => expect(printNumber(value, decimals, de)).toBe(printed));

  test('have their sign where it is asked for', () => {
    expect(printSigned(1234.5, 1, de)).toBe('+1.234,5');
    expect(printSigned(-0.25, 1, de)).toBe('\u22120,3');
  });

  test('of a date are day, month and year of two, two and four digits', () => {
    expect(printDate('2026-11-25', de)).toBe('25.11.2026');
    expect(printDate('2026-03-04', de)).toBe('04.03.2026');
    expect(printTimestamp('2026-11-05T14:20:00+01:00', de)).toBe('05.11.2026, 14:20\u00a0+01:00');
  });

  test('carry the unit of the record', () => {
    const fmt = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' }, localeOf('de'));
    expect(fmt.measure('moment', 537781.4)).toBe('537.781\u00a0kg·mm');
    expect(fmt.measure('mass', 325.86)).toBe('325,9\u00a0kg');
    expect(fmt.asIs(-1013.25)).toBe('\u22121013,25');
  });
});

test('English figures are those that every country reads alike', () => {
  expect(printNumber(12345.6, 1, en)).toBe('12\u00a0345.6');
  expect(printNumber(1234.5, 1, en)).toBe('1234.5');
  expect(printDate('2026-11-25', en)).toBe('25\u00a0Nov\u00a02026');
});

test('plural rules are those of the CLDR that numbers and dates are taken from', () => {
  expect(process.versions.cldr).toBe(CLDR_VERSION);
  for (const language of LANGUAGES) {
    const rules = new Intl.PluralRules(language);
    for (let count = 0; count <= 200; count += 0.5) expect(PLURALS[language](count)).toBe(rules.select(count));
  }
});
