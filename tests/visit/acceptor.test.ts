import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { canonicalJson } from '../../worker/pack/canonical-json.ts';
import { acceptorOf } from '../../worker/visit/acceptor.ts';
import { VisitRecord } from '../../worker/visit/record.ts';
import { RUNS } from '../property-runs.ts';
import { fixturesIn, readFixture } from '../read-fixture.ts';

const accepts = acceptorOf(VisitRecord);

type Path = readonly (string | number)[];

/** Every place in a record. */
function placesIn(value: unknown, at: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [at];
  return [at, ...Object.entries(value).flatMap(([key, entry]) => placesIn(entry, [...at, key]))];
}

/** A copy in which something stands in a place; `undefined` takes it out. */
function withValue(record: unknown, path: Path, value: unknown): unknown {
  const copy = structuredClone(record);
  const last = path.at(-1);
  if (last === undefined) return value;
  const holder = path.slice(0, -1).reduce<unknown>((held, key) => (held as Record<string, unknown>)[key], copy);
  if (value === undefined) delete (holder as Record<string, unknown>)[last];
  else (holder as Record<string, unknown>)[last] = value;
  return copy;
}

const ODD_VALUES = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    '',
    ' ',
    'a\nb',
    'x'.repeat(201),
    'x'.repeat(4001),
    0,
    -0,
    1.5,
    -1,
    1e9 + 1,
    1e308,
  ),
  fc.constantFrom<unknown>(
    [],
    {},
    [null],
    { id: 'X' },
    true,
    '2026-02-30',
    '2026-11-05',
    '2026-11-05T14:20:00+01:00',
    'kg',
  ),
  fc.jsonValue({ maxDepth: 2 }),
  fc.string(),
  fc.double(),
);

describe('acceptorOf()', () => {
  test.each(fixturesIn('visits'))('says yes to %s', (name) => {
    expect(accepts(readFixture(`visits/${name}`))).toBe(true);
  });

  test.each(fixturesIn('visits'))('says of %s, however it is spoilt, what zod says', (name) => {
    const record = readFixture(`visits/${name}`);
    const places = placesIn(record);
    const spoilt = fc.tuple(fc.constantFrom(...places), ODD_VALUES);
    fc.assert(
      fc.property(spoilt, ([path, value]) => {
        const changed = withValue(record, path, value);
        const parsed = VisitRecord.safeParse(changed);
        expect(accepts(changed)).toBe(parsed.success);
        // What is accepted as it stands is what zod would have made of it.
        if (parsed.success) expect(canonicalJson(parsed.data)).toBe(canonicalJson(changed));
      }),
      { ...RUNS, numRuns: 1500 },
    );
  });

  test('says no to keys that nobody knows, at every depth', () => {
    const record = readFixture('visits/nose-wheel-full');
    const objects = placesIn(record).filter((path) => {
      const at = path.reduce<unknown>((held, key) => (held as Record<string, unknown>)[key], record);
      return typeof at === 'object' && at !== null && !Array.isArray(at);
    });
    for (const path of objects) {
      expect(accepts(withValue(record, [...path, 'unheardOf'], 1)), path.join('/')).toBe(false);
    }
    expect(accepts(JSON.parse('{"__proto__": {}}'))).toBe(false);
  });

  test('leaves what it does not know to zod', () => {
    const odd = z.strictObject({
      either: z.union([z.string(), z.number()]),
      trimmed: z.string().trim(),
      refined: z.string().superRefine((text, context) => {
        if (text !== 'yes') context.addIssue({ code: 'custom', message: 'no' });
      }),
      whole: z.int().optional(),
    });
    const isOdd = acceptorOf(odd);
    const samples = [
      { either: 1, trimmed: 'a', refined: 'yes' },
      { either: null, trimmed: 'a', refined: 'yes' },
      { either: 'a', trimmed: 'a', refined: 'no' },
      { either: 'a', trimmed: 'a', refined: 'yes', whole: 1.5 },
      { either: 'a', trimmed: 'a', refined: 'yes', whole: 2 },
    ];
    for (const sample of samples) expect(isOdd(sample)).toBe(odd.safeParse(sample).success);
  });
});
