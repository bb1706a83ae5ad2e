import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { visitJsonSchema } from '../../../worker/core/record/json-schema.ts';
import { pointer, stepsOf } from '../../../worker/core/record/pointer.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { VisitRecord } from '../../../worker/core/record/record.ts';
import { renaming } from '../../../worker/core/record/upgrade-step.ts';
import { pathAsPosted, presentPath, SCHEMA_VERSION, upgrade } from '../../../worker/core/record/upgrades.ts';
import { type Operation, patched } from '../../json-patch.ts';
import { readFixture } from '../../read-fixture.ts';
import { isKey, schemaFields } from './schema-fields.ts';

const OLD = readFixture('records/version-1/nose-wheel-full');
const PRESENT = upgrade(OLD);

/** Pointer in a record as posted of a field of the present version. */
const pointerAsPosted = (posted: unknown, at: string): string => pointer(...pathAsPosted(posted, stepsOf(at)));

const issuesOf = (record: unknown, patch: Operation[]) => {
  const read = readRecord(patched(record, patch));
  return read.ok ? [] : read.issues.map(({ code, pointer: at, remedy }) => [code, at, remedy.split(':')[0]]);
};

describe('a record of an older version', () => {
  test('is brought to the present version from each one', () => {
    for (let version = 1; version <= SCHEMA_VERSION; version++)
      expect(upgrade({ schemaVersion: version })).toEqual({ schemaVersion: SCHEMA_VERSION });
  });

  test('of version 2 has its layout as undercarriage, and its class unstated but for weight-shift control', () => {
    const ofClass = (name: string) => {
      const { class: of, undercarriage } = (upgrade(readFixture(`records/version-2/${name}`)) as VisitRecord).aircraft;
      return [of, undercarriage];
    };
    expect(['nose-wheel-full', 'weighing-only', 'trike'].map(ofClass)).toEqual([
      ['unstated', 'nose-wheel'],
      ['unstated', 'tail-wheel'],
      ['weight-shift', undefined],
    ]);
    for (const name of ['nose-wheel-full', 'weighing-only', 'trike', 'computed-only'])
      expect(readRecord(readFixture(`records/version-2/${name}`)).ok).toBe(true);
  });

  test('of version 3 has its altimeter and its static system as lists of one, and points at them as posted', () => {
    const old = readFixture('records/version-3/nose-wheel-full');
    const { surveillance } = upgrade(old) as VisitRecord;
    expect([surveillance?.altimeters?.length, surveillance?.staticSystems?.length]).toEqual([1, 1]);
    for (const name of ['nose-wheel-full', 'trike'])
      expect(readRecord(readFixture(`records/version-3/${name}`)).ok).toBe(true);
    const wrong: Operation[] = [
      { op: 'replace', path: '/surveillance/altimeter/scale/1/readFt', value: 'high' },
      { op: 'replace', path: '/surveillance/staticSystem', value: 7 },
    ];
    expect(issuesOf(old, wrong)).toEqual([
      ['RECORD_TYPE_WRONG', '/surveillance/altimeter/scale/1/readFt', 'Correct it'],
      ['RECORD_TYPE_WRONG', '/surveillance/staticSystem', 'Correct it'],
    ]);
    expect(issuesOf(old, [{ op: 'add', path: '/surveillance/altimeters', value: [] }])).toEqual([
      ['RECORD_KEY_UNKNOWN', '/surveillance/altimeters', 'Write "altimeter", its name in schemaVersion 3'],
    ]);
    expect(issuesOf(upgrade(old), [{ op: 'add', path: '/surveillance/altimeter', value: {} }])).toEqual([
      ['RECORD_KEY_UNKNOWN', '/surveillance/altimeter', 'Write "altimeters", its name in schemaVersion 4'],
    ]);
  });

  test('says a wrong layout where it was posted', () => {
    const old = readFixture('records/version-2/weighing-only');
    expect(issuesOf(old, [{ op: 'replace', path: '/aircraft/layout', value: 'hovercraft' }])).toEqual([
      ['RECORD_VALUE_WRONG', '/aircraft/layout', 'Correct it'],
    ]);
  });

  test('stays as it was posted itself', () => {
    expect(OLD).toMatchObject({ schemaVersion: 1 });
    expect(OLD).toEqual(readFixture('records/version-1/nose-wheel-full'));
  });

  test('has the renamed fields of antennas under their new names', () => {
    const { items } = (PRESENT as VisitRecord).antennas ?? { items: [] };
    expect(items.map(({ groundPlane, minimumSpacing }) => [groundPlane?.minimumRadius, minimumSpacing])).toEqual([
      [640, 700],
      [100, 600],
      [95, 300],
      [undefined, 500],
      [200, 750],
    ]);
    expect(JSON.stringify(PRESENT)).toBe(
      JSON.stringify(OLD)
        .replace('"schemaVersion":1', '"schemaVersion":4')
        .replace('"aircraft":{', '"aircraft":{"class":"unstated",')
        .replace('"layout":"nose-wheel"', '"undercarriage":"nose-wheel"')
        .replace('"altimeter":{', '"altimeters":[{')
        .replace('}]}},"staticSystem":{', '}]}}],"staticSystems":[{')
        .replace('"isUndeformed":true}', '"isUndeformed":true}]')
        .replaceAll('"leastRadius"', '"minimumRadius"')
        .replaceAll('"leastSpacing"', '"minimumSpacing"'),
    );
  });

  test('is read as the same record', () => {
    const [old, present] = [readRecord(OLD), readRecord(PRESENT)];
    if (!old.ok || !present.ok) throw new Error('Cannot compare: both records must fit the schema');
    expect(old.visit).toEqual(present.visit);
    expect(old.record).toEqual(present.record);
  });

  test('fits the schema that was published with it, and only that one', () => {
    const ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    const old = ajv.compile({ ...(readFixture('records/version-1/visit.schema') as object), $id: 'version-1' });
    const present = ajv.compile(visitJsonSchema());
    expect([old(OLD), present(OLD)]).toEqual([true, false]);
    expect([old(PRESENT), present(PRESENT)]).toEqual([false, true]);
  });

  test('of no known version is left alone', () => {
    for (const version of [0, -1, 1.5, '1', null, undefined, 5, Number.NaN]) {
      const record = { schemaVersion: version, antennas: { items: [{ leastSpacing: 1 }] } };
      expect(upgrade(record)).toBe(record);
    }
  });

  test('of any other shape is carried along, and never thrown at', () => {
    const anything = fc.jsonValue({ maxDepth: 3 });
    const antennas = fc.oneof(anything, fc.record({ items: fc.oneof(anything, fc.array(anything)) }));
    fc.assert(
      fc.property(antennas, (part) => {
        const old = { schemaVersion: 1, antennas: part };
        expect(Object.keys(upgrade(old) as object)).toEqual(Object.keys(old));
        expect(readRecord(old).ok).toBe(false);
      }),
    );
  });
});

describe('what is wrong with it is said of the record as posted', () => {
  const radius = '/antennas/items/0/groundPlane/leastRadius';

  test('a value, and a missing one', () => {
    expect(issuesOf(OLD, [{ op: 'replace', path: radius, value: -5 }])).toEqual([
      ['RECORD_VALUE_WRONG', radius, 'Correct it'],
    ]);
    expect(issuesOf(OLD, [{ op: 'remove', path: radius }])).toEqual([['RECORD_FIELD_MISSING', radius, 'Add it']]);
  });

  test('a name of a later version', () => {
    const later = '/antennas/items/0/minimumSpacing';
    const remedy = 'Write "leastSpacing", its name in schemaVersion 1';
    expect(issuesOf(OLD, [{ op: 'add', path: later, value: 5 }])).toEqual([['RECORD_KEY_UNKNOWN', later, remedy]]);
  });

  test('a name of an earlier version', () => {
    const at = '/antennas/items/1/leastSpacing';
    const remedy = 'Write "minimumSpacing", its name in schemaVersion 4';
    expect(issuesOf(PRESENT, [{ op: 'add', path: at, value: 5 }])).toEqual([['RECORD_KEY_UNKNOWN', at, remedy]]);
  });

  test('with the fields that it may have', () => {
    const at = '/antennas/items/0/groundPlane/colour';
    const remedy = 'Remove it; the fields here are kind, size, leastRadius';
    expect(issuesOf(OLD, [{ op: 'add', path: at, value: 5 }])).toEqual([['RECORD_KEY_UNKNOWN', at, remedy]]);
  });
});

describe('places in a record as it was posted', () => {
  test('are found for every field, and back', () => {
    const old = { schemaVersion: 1 };
    const moved = schemaFields(VisitRecord).flatMap(({ steps }) => {
      const path = steps.flatMap<PropertyKey>((step) => (isKey(step) ? [step] : 'entry' in step ? [0] : []));
      const posted = pathAsPosted(old, path);
      expect(presentPath(posted)).toEqual(path);
      return posted.join() === path.join() ? [] : [pointer(...posted)];
    });
    const isInList = (at: string): boolean => /^\/surveillance\/(?:altimeter|staticSystem)\//.test(at);
    expect(moved.filter((at) => !isInList(at))).toEqual([
      '/aircraft/layout',
      '/antennas/items/0/groundPlane/leastRadius',
      '/antennas/items/0/leastSpacing',
    ]);
    expect(moved).toContain('/surveillance/altimeter/scale/0/readFt');
    expect(moved).toContain('/surveillance/staticSystem/lossFt');
  });

  test('are those of the finding in a record of the present version, and of none', () => {
    const at = '/antennas/items/0/minimumSpacing';
    expect(pointerAsPosted(OLD, at)).toBe('/antennas/items/0/leastSpacing');
    for (const posted of [PRESENT, {}, null, 'text']) expect(pointerAsPosted(posted, at)).toBe(at);
  });

  test('are text as it was, escapes and all', () => {
    for (const at of ['', '/', '/a~1b/~0/0', '/antennas/items/0/minimumSpacings'])
      expect(pointerAsPosted(OLD, at)).toBe(at);
  });
});

test('renaming() takes a part and then a field in it', () => {
  const { apply, pathBefore, pathAfter } = renaming(1, [
    { of: [], before: 'a', after: 'b' },
    { of: ['b', '#'], before: 'c', after: 'd' },
  ]);
  expect(apply({ a: [{ c: 1 }, 2, { e: [{ c: 3 }] }], f: 4 })).toEqual({ b: [{ d: 1 }, 2, { e: [{ c: 3 }] }], f: 4 });
  expect(pathAfter(['a', 0, 'c'])).toEqual(['b', 0, 'd']);
  expect(pathBefore(['b', 0, 'd'])).toEqual(['a', 0, 'c']);
});
