import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { visitJsonSchema } from '../../../worker/core/record/json-schema.ts';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { patched } from '../../json-patch.ts';
import { RUNS } from '../../property-runs.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';
import { optionOf } from '../record/map-measured.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';

type Node = Record<string, unknown>;

/** Pointers to every number of a record, with the least and greatest value that the schema allows there. */
function numbersOf(node: Node, value: unknown, at = ''): { at: string; least: number; most: number }[] {
  if (typeof value === 'number') {
    return node.minimum === undefined ? [] : [{ at, least: Number(node.minimum), most: Number(node.maximum) }];
  }
  if (Array.isArray(value))
    return value.flatMap((entry, index) => numbersOf(node.items as Node, entry, `${at}/${index}`));
  if (typeof value !== 'object' || value === null) return [];
  const { properties } = optionOf(node, value as Node);
  return Object.entries(value).flatMap(([key, entry]) => {
    const field = (properties as Record<string, Node> | undefined)?.[key];
    return field ? numbersOf(field, entry, `${at}/${key}`) : [];
  });
}

/** Pointers to everything in a record that may be cut out, so far as the schema is concerned. */
function partsOf(value: unknown, at = ''): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, entry]) => [`${at}/${key}`, ...partsOf(entry, `${at}/${key}`)]);
}

/** One of each kind of place: the first entry of a list stands for the others. */
function firstOfEach<Place>(places: readonly Place[], pointerOf: (place: Place) => string): Place[] {
  const seen = new Map(places.toReversed().map((place) => [pointerOf(place).replace(/\/\d+/g, '/*'), place]));
  return [...seen.values()];
}

/** Whatever a client sends that fits the schema gets findings, and never an error of ours. */
function expectFindings(record: unknown, at: string): void {
  if (!readRecord(record).ok) return;
  for (const { code, sentence, data } of assessRecord(record, at).findings) {
    expect(sentence, code).not.toMatch(/undefined|NaN|Infinity/);
    expect(JSON.stringify(data), code).not.toContain('null');
  }
}

describe('passGate() answers for any record that fits the schema', () => {
  for (const name of fixturesIn('visits')) {
    const record = readFixture(`visits/${name}`);
    const at = RELEASABLE_AT[name] ?? '';
    const numbers = firstOfEach(numbersOf(visitJsonSchema(), record), (number) => number.at);

    test(`${name} with any part cut out`, () => {
      for (const path of firstOfEach(partsOf(record), (part) => part))
        expectFindings(patched(record, [{ op: 'remove', path }]), at);
    });

    test(`${name} with any number at a bound, or nothing`, () => {
      for (const { at: path, least, most } of numbers) {
        for (const value of [least, most, 0, 1e-300])
          expectFindings(patched(record, [{ op: 'replace', path, value }]), at);
      }
    });

    test(`${name} with several numbers anywhere`, () => {
      const change = fc.constantFrom(...numbers).chain(({ at: path, least, most }) =>
        fc.record({
          op: fc.constant('replace' as const),
          path: fc.constant(path),
          value: fc.oneof(fc.double({ min: least, max: most, noNaN: true }), fc.constantFrom(least, most, 0)),
        }),
      );
      fc.assert(
        fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
          expectFindings(patched(record, changes), at);
        }),
        RUNS,
      );
    });
  }
});
