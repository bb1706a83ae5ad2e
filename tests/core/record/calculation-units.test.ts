import { describe, expect, test } from 'vitest';
import { inCalculationUnits } from '../../../worker/core/record/calculation-units.ts';
import { Change } from '../../../worker/core/record/modification.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import type { UnitsPart } from '../../../worker/core/record/units.ts';
import { Weighing } from '../../../worker/core/record/weighing.ts';
import { QUANTITY_SUFFIX, type Quantity } from '../../../worker/core/units/quantity.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';
import { mapMeasured } from './map-measured.ts';

// Kilograms, millimetres and litres of each unit, written out by hand from the definitions.
const KG = { kg: 1, lb: 0.45359237 };
const MM = { mm: 1, cm: 10, m: 1000, in: 25.4 };
const L = { l: 1, usgal: 3.785411784, impgal: 4.54609 };

function factorsOf({ mass, arm, volume }: UnitsPart): Record<Quantity, number> {
  const [kg, mm, l] = [KG[mass], MM[arm], L[volume]];
  return { mass: kg, arm: mm, moment: kg * mm, volume: l, density: kg / l, flow: l };
}

describe('readRecord() renames and converts every measured field, and nothing else', () => {
  for (const name of fixturesIn('visits')) {
    test(name, () => {
      const record = readFixture(`visits/${name}`);
      const read = readRecord(record);
      if (!read.ok) throw new Error(JSON.stringify(read.issues));
      const factors = factorsOf(read.record.units);
      const expected = mapMeasured(record, {
        convert: (value, quantity) => value * factors[quantity],
        rename: (key, quantity) => key + QUANTITY_SUFFIX[quantity],
      });
      expect(read.visit).toEqual(expected);
      expect(read.record).toEqual(record);
    });
  }
});

test('inCalculationUnits() converts lists of numbers and leaves degrees alone', () => {
  const { weighing } = readFixture('visits/weighing-only') as { weighing: Weighing };
  const converted = inCalculationUnits(Weighing, weighing, { mass: 'lb', arm: 'in', volume: 'usgal' });
  expect(converted.points[0]?.readingsKg).toEqual([357.5 * 0.45359237, 358 * 0.45359237, 357.5 * 0.45359237]);
  expect(converted.points[2]?.armMm).toBe(178.4 * 25.4);
  expect(converted.level?.longitudinalDeg).toBe(0.1);
});

test('inCalculationUnits() follows the kind that a value names', () => {
  const moved = Change.parse({ kind: 'relocated', item: 'E1', arm: 10 });
  const converted = inCalculationUnits(Change, moved, { mass: 'kg', arm: 'cm', volume: 'l' });
  expect(converted).toEqual({ kind: 'relocated', item: 'E1', armMm: 100 });
});
