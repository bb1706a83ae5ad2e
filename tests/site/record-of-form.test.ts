import { describe, expect, test } from 'vitest';
import { type Filled, recordOfForm } from '../../site/browser/weighing/record-of-form.ts';
import { SECTIONS } from '../../site/weighing-form/sections.ts';
import { assess } from '../../worker/core/core.ts';
import { readFixture } from '../read-fixture.ts';

const AT = '2026-09-18T22:00:00Z';
const FIELDS = SECTIONS.flatMap(({ fields }) => fields);

/** What the form holds once the record is filled into it: the fields that it has. */
function filledFrom(record: unknown): Filled {
  const entries = FIELDS.map((pointer) => {
    const steps = pointer.split('/').slice(1);
    return [pointer, steps.reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], record)];
  });
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

const example = filledFrom(readFixture('visits/weighing-only'));

async function weighed(filled: Filled) {
  const outcome = await assess(recordOfForm(filled).record, AT, {});
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues, null, 1));
  return outcome.assessed;
}

describe('recordOfForm()', () => {
  test('gives a record that passes the gate and weighs what the record weighed that was filled in', async () => {
    const ofForm = await weighed(example);
    const ofRecord = await assess(readFixture('visits/weighing-only'), AT, {});
    if (!ofRecord.ok) throw new Error('the fixture must be a record');
    expect(ofForm.isReleasable).toBe(true);
    expect(ofForm.results.weighing?.asWeighed).toEqual(ofRecord.assessed.results.weighing?.asWeighed);
  });

  test('closes rows that were left empty, and finds the fields again', () => {
    const withoutSecond = Object.fromEntries(
      Object.entries(example).filter(
        ([field]) => !/\/(points|scales)\/1\//.test(field) && !field.includes('stations/0'),
      ),
    );
    const { record, fieldOf } = recordOfForm(withoutSecond);
    const { weighing, aircraft } = record as {
      weighing: { points: { name: string; scale: string }[]; scales: { id: string }[] };
      aircraft: { stations: { kind: string }[] };
    };
    expect(weighing.points.map(({ name }) => name)).toEqual(['Left main', 'Tail wheel on stand']);
    expect(weighing.points.map(({ scale }) => scale)).toEqual(weighing.scales.map(({ id }) => id));
    expect(aircraft.stations[0]?.kind).toBe('passenger');
    expect(fieldOf('/weighing/points/1/arm')).toBe('/weighing/points/2/arm');
    expect(fieldOf('/aircraft/maximumMass')).toBe('/aircraft/maximumMass');
  });

  test('says of an empty form what is missing, in fields of the form', async () => {
    const { record, fieldOf } = recordOfForm({ '/units/mass': 'kg' });
    const outcome = await assess(record, AT, {});
    if (outcome.ok) throw new Error('an empty form is no record');
    const pointers = outcome.issues.map(({ pointer }) => fieldOf(pointer));
    expect(pointers).toContain('/aircraft/registration');
    expect((record as { weighing?: unknown }).weighing).toBeUndefined();
  });
});
