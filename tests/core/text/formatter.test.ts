import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isAtMost } from '../../../worker/core/calc/numbers/limit-met.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import {
  ARM_UNITS,
  factorOf,
  MASS_UNITS,
  QUANTITY_SUFFIX,
  type Quantity,
  unitOf,
  VOLUME_UNITS,
} from '../../../worker/core/units/quantity.ts';
import { RUNS } from '../../property-runs.ts';

const IMPERIAL = { mass: 'lb', arm: 'in', volume: 'usgal' } as const;
const SI = { mass: 'kg', arm: 'mm', volume: 'l' } as const;

describe('formatterFor() prints values of calculation in the units of the record', () => {
  test('with the decimals of the unit', () => {
    const fmt = formatterFor(IMPERIAL);
    expect(fmt.measure('mass', 340.1186787716667)).toBe('749.8\u00a0lb');
    expect(fmt.measure('arm', 254)).toBe('10.00\u00a0in');
    expect(fmt.measure('moment', 11521.246198)).toBe('1000.0\u00a0lb·in');
    expect(fmt.measure('volume', 3.785411784)).toBe('1.0\u00a0US gal');
    expect(fmt.measure('density', 0.71896)).toBe('6.000\u00a0lb/US gal');
    expect(fmt.measure('flow', 18.92705892)).toBe('5.0\u00a0US gal/h');
    expect(formatterFor({ ...SI, arm: 'm' }).measure('arm', -1234.4)).toBe('\u22121.234\u00a0m');
  });

  test('with more decimals and with signs where asked', () => {
    const fmt = formatterFor(SI);
    expect(fmt.number('mass', 1.25, { extra: 1, signed: true })).toBe('+1.25');
    expect(fmt.measure('arm', -0.4, { signed: true })).toBe('0\u00a0mm');
  });

  test('with as many digits as show that a limit is broken', () => {
    const fmt = formatterFor(SI);
    expect(fmt.plainApart(0.504, 0.5, 2)).toEqual(['0.504', '0.500']);
    expect(fmt.plainApart(0.62, 0.5, 1)).toEqual(['0.6', '0.5']);
    expect(fmt.plainApart(0.5, 0.5, 1)).toEqual(['0.5', '0.5']);
    expect(fmt.apart('mass', 1.04, 1, { signed: true })).toEqual(['+1.04\u00a0kg', '1.00\u00a0kg']);
    expect(fmt.apart('mass', -1.04, 1)).toEqual(['\u22121.04\u00a0kg', '1.00\u00a0kg']);
    expect(formatterFor(IMPERIAL).apart('arm', 596.86, 596.9)).toEqual(['23.498\u00a0in', '23.500\u00a0in']);
  });

  test('never a value beyond its limit like the limit, in any unit', () => {
    const units = fc.record({
      mass: fc.constantFrom(...MASS_UNITS),
      arm: fc.constantFrom(...ARM_UNITS),
      volume: fc.constantFrom(...VOLUME_UNITS),
    });
    const limits = fc.double({ min: 0.01, max: 5000, noNaN: true });
    const excesses = fc.double({ min: -8, max: 2, noNaN: true }).map((power) => 10 ** power);
    fc.assert(
      fc.property(units, limits, excesses, (of, limit, excess) => {
        const value = limit + excess;
        if (isAtMost(value, limit)) return;
        const fmt = formatterFor(of);
        const pairs = [
          fmt.plainApart(value, limit, 1),
          fmt.apart('mass', value, limit),
          fmt.apart('arm', value, limit),
        ];
        for (const [printed, printedLimit] of pairs) expect(printed).not.toBe(printedLimit);
      }),
      RUNS,
    );
  });

  test('in every unit, so that what is printed reads back as what was computed', () => {
    const units = fc.record({
      mass: fc.constantFrom(...MASS_UNITS),
      arm: fc.constantFrom(...ARM_UNITS),
      volume: fc.constantFrom(...VOLUME_UNITS),
    });
    const quantities = fc.constantFrom(...(Object.keys(QUANTITY_SUFFIX) as Quantity[]));
    fc.assert(
      fc.property(units, quantities, fc.double({ min: -1e4, max: 1e4, noNaN: true }), (chosen, quantity, value) => {
        const fmt = formatterFor(chosen);
        const printed = fmt.number(quantity, value, { extra: 6 }).replaceAll('\u00a0', '').replace('\u2212', '-');
        const factor = factorOf(quantity, chosen);
        expect(Math.abs(Number(printed) * factor - value)).toBeLessThanOrEqual(0.51e-6 * factor + 1e-9);
        expect(fmt.unit(quantity)).toBe(unitOf(quantity, chosen));
      }),
      RUNS,
    );
  });
});
