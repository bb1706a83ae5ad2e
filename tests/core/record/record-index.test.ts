import { describe, expect, test } from 'vitest';
import { near } from '../../../worker/core/record/near.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { VisitRecord } from '../../../worker/core/record/record.ts';
import { type FieldKind, type Place, type RecordForm, recordIndex } from '../../../worker/core/record/record-index.ts';
import { valueAt } from '../../json-patch.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';

function placesIn<Kind extends FieldKind>(value: object, kind: Kind, form: RecordForm): Place<Kind>[] {
  const places: Place<Kind>[] = [];
  recordIndex(VisitRecord, kind)(value, form, (_, place) => places.push(place()));
  return places;
}

const KINDS: readonly FieldKind[] = ['identifier', 'person', 'reference', 'timestamp', 'past-date', 'arm', 'text'];

const pointerOf = ({ path }: Pick<Place, 'path'>): string => path.map((step) => `/${step}`).join('');

describe('recordIndex()', () => {
  for (const name of fixturesIn('visits')) {
    const record = readFixture(`visits/${name}`) as object;
    const read = readRecord(record);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));

    test.each(KINDS)(`finds the same %s in ${name} as posted and after the door`, (kind) => {
      const posted = placesIn(record, kind, 'posted');
      const converted = placesIn(read.visit, kind, 'calculation');
      expect(converted.map(pointerOf)).toEqual(posted.map(pointerOf));
      for (const place of posted) expect(place.value, pointerOf(place)).toBe(valueAt(record, pointerOf(place)));
      expect(posted.length).toBeGreaterThan(0);
    });

    test(`finds arms of ${name} in millimetres after the door`, () => {
      const [posted] = placesIn(record, 'arm', 'posted');
      const [converted] = placesIn(read.visit, 'arm', 'calculation');
      const mm = { mm: 1, cm: 10, m: 1000, in: 25.4 }[read.record.units.arm];
      expect(converted?.value).toBe((posted?.value ?? 0) * mm);
    });
  }

  test('enters the variant that a value names, and no other', () => {
    const record = readFixture('visits/nose-wheel-full') as { modifications: { changes: { kind: string }[] }[] };
    const kinds = record.modifications.flatMap(({ changes }) => changes.map(({ kind }) => kind));
    const identified = placesIn(record, 'identifier', 'posted').filter(({ path }) => path[2] === 'changes');
    expect(identified).toHaveLength(kinds.filter((kind) => kind === 'installed' || kind === 'replaced').length);
  });
});

describe('near()', () => {
  const record = readFixture('visits/nose-wheel-full') as object;
  const closed = placesIn(record, 'timestamp', 'posted').find((place) => pointerOf(place) === '/findings/1/closedAt');
  if (!closed) throw new Error('No such time');

  test('takes the nearest part around that has the field', () => {
    expect(near(closed, 'foundAt')?.path).toEqual(['findings', 1, 'foundAt']);
  });

  test('goes out to the record itself', () => {
    expect(near(closed, 'visit.arrivedAt')).toEqual({
      path: ['visit', 'arrivedAt'],
      value: '2026-11-03T09:10:00+01:00',
    });
  });

  test('finds nothing where nothing is stated', () => expect(near(closed, 'deferral.firstDeferredOn')).toBeUndefined());
});
