import { expect, test } from 'vitest';
import { assessed } from '../../bench/gate/assessed.ts';
import { changesOf } from '../../bench/gate/changes.ts';
import { classify, soundOf } from '../../bench/gate/classify.ts';
import type { Class } from '../../bench/gate/judgement.ts';
import { apply, type Operator } from '../../bench/gate/operators.ts';
import { type Json, placesOf } from '../../bench/gate/place.ts';
import { readFixture } from '../../read-fixture.ts';
import { RELEASABLE_AT } from './assess-record.ts';

const AT = RELEASABLE_AT.trike ?? '';
const record = readFixture('visits/trike') as Json;
const before = assessed(record, AT);
if (!before) throw new Error('The record does not fit the schema');
const places = placesOf(record);
const sound = soundOf(record, places, { results: before.results, at: AT, knows: () => false });

/** The class of a change of the trike. */
function classOf(path: string, operator: Operator, to?: Json): Class | undefined {
  const place = places.find((one) => one.path.join('/') === path);
  if (!place) throw new Error(`Nothing is stated at ${path}`);
  const change = { place, operator, ...(to !== undefined && { to }) };
  const undo = apply(record, change);
  const after = assessed(record, AT);
  const verdict = after && classify(change, record, after.results, sound);
  undo();
  return verdict?.is;
}

test.each<[string, Operator, Json | undefined, Class]>([
  ['aircraft/stations/0/maximumMass', 'times 10', 1100, 'hurts'],
  ['aircraft/stations/0/maximumMass', 'digit changed', 100, 'free'],
  ['aircraft/loadingLimits/0', 'left out', undefined, 'hurts'],
  ['lives/items/0/basis', 'choice', 'owner', 'hurts'],
  ['controls/checks/0', 'left out', undefined, 'hurts'],
  ['weighing/points/0/readings/0', 'times 10', 831, 'hurts'],
  ['baseline/engineSerial', 'letter changed', 'T4-1907', 'contradicts'],
  ['visit/workEndedAt', '-400 d', '2025-09-17T16:00:00+01:00', 'contradicts'],
  ['baseline/equipment/0', 'doubled', null, 'contradicts'],
  ['workshop/name', 'letters swapped', 'Lower Maedow', 'free'],
  ['baseline/equipment', 'reordered', null, 'nothing'],
])('%s, %s: %j', (path, operator, to, expected) => {
  const list = places.find((one) => one.path.join('/') === path)?.value;
  const stated = operator === 'reordered' && Array.isArray(list) ? list.toReversed() : to;
  expect(classOf(path, operator, stated)).toBe(expected);
});

test('the changes of a record are the same at each run, and leave it as it was', () => {
  const shown = (): string => JSON.stringify(changesOf(record, 'trike', 1));
  const [first, text] = [shown(), JSON.stringify(record)];
  for (const change of changesOf(record, 'trike', 1).changes) apply(record, change)();
  expect(JSON.stringify(record)).toBe(text);
  expect(shown()).toBe(first);
});
