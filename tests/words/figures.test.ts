import { describe, expect, test } from 'vitest';
import { printDate, printMoment } from '../../worker/text/dates.ts';
import { printNumber, printSigned } from '../../worker/text/numbers.ts';
import { printerFor } from '../../worker/text/print.ts';
import { FIGURES } from '../../worker/words/figures.ts';
import { lexiconFor } from '../../worker/words/lexicons.ts';

const { de, en } = FIGURES;

/** As Unicode CLDR 44.1 has them for `de`. */
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
    expect(printMoment('2026-11-05T14:20:00+01:00', de)).toBe('05.11.2026, 14:20\u00a0+01:00');
  });

  test('carry the unit of the record', () => {
    const say = printerFor({ mass: 'kg', arm: 'mm', volume: 'l' }, lexiconFor('de'));
    expect(say.measure('moment', 537781.4)).toBe('537.781\u00a0kg·mm');
    expect(say.measure('mass', 325.86)).toBe('325,9\u00a0kg');
    expect(say.asIs(-1013.25)).toBe('\u22121013,25');
  });
});

test('English figures are those that every country reads alike', () => {
  expect(printNumber(12345.6, 1, en)).toBe('12\u00a0345.6');
  expect(printNumber(1234.5, 1, en)).toBe('1234.5');
  expect(printDate('2026-11-25', en)).toBe('25\u00a0Nov\u00a02026');
});
