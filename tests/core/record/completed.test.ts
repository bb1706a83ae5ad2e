import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { completed, statedPath, without } from '../../../worker/core/record/completed.ts';
import { differences } from '../../../worker/core/record/standing-changes.ts';
import { RUNS } from '../../property-runs.ts';

const STANDING = {
  name: 'Dipper',
  envelope: [{ mass: 1 }, { mass: 2 }],
  stations: [
    { id: 'left', arm: 10, most: 110 },
    { id: 'right', arm: 10, most: 110 },
    { id: 'bay', arm: 20, most: 25 },
  ],
};

const entry = fc.record({
  id: fc.constantFrom('a', 'b', 'c', 'd'),
  x: fc.option(fc.nat(9), { nil: undefined }),
  y: fc.nat(9),
});
const list = fc.uniqueArray(entry, { selector: ({ id }) => id, maxLength: 4 });
const value = fc.record(
  { plain: fc.nat(9), list, part: fc.record({ z: fc.nat(9), w: fc.nat(9) }, { requiredKeys: [] }) },
  { requiredKeys: [] },
);
const plain = (of: unknown): unknown => JSON.parse(JSON.stringify(of));

describe('completed()', () => {
  test('completes parts by member and lists by name, in the standing order', () => {
    const { value: whole } = completed({ stations: [{ id: 'new' }, { id: 'bay', most: 20 }] }, STANDING);
    expect(whole).toEqual({
      ...STANDING,
      stations: [...STANDING.stations.slice(0, 2), { id: 'bay', arm: 20, most: 20 }, { id: 'new' }],
    });
  });

  test('replaces a list without names whole', () => {
    expect(completed({ envelope: [{ mass: 3 }] }, STANDING).value).toEqual({ ...STANDING, envelope: [{ mass: 3 }] });
  });

  test('keeps two stated entries of one name apart: that is an error to be found later', () => {
    const twice = completed(
      {
        stations: [
          { id: 'bay', most: 1 },
          { id: 'bay', most: 2 },
        ],
      },
      STANDING,
    ).value;
    expect((twice as typeof STANDING).stations.filter(({ id }) => id === 'bay')).toHaveLength(2);
  });

  test('takes no member from the prototype of objects', () => {
    const stated = JSON.parse('{"__proto__":{"name":"x"},"constructor":1}') as object;
    const { value: whole } = completed(stated, STANDING);
    expect(Object.getPrototypeOf(whole)).toBe(Object.prototype);
    expect(Object.keys(whole as object)).toContain('__proto__');
    expect(completed({}, { toString: 1 }).value).toEqual({ toString: 1 });
  });

  test('of the standing value itself changes nothing, and whatever is stated is in the result', () => {
    fc.assert(
      fc.property(value, value, (stated, standing) => {
        const [a, b] = [plain(stated), plain(standing)];
        expect(completed(b, b).value).toEqual(b);
        expect(completed({}, b).value).toEqual(b);
        const whole = completed(a, b).value;
        expect(completed(a, whole).value).toEqual(whole);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });
});

describe('statedPath()', () => {
  const stated = { stations: [{ id: 'new' }, { id: 'bay', most: 20 }], mac: { length: 1 } };
  const { origin } = completed(stated, STANDING);

  test.each([
    ['stated entry, completed', ['stations', 2, 'most'], ['stations', 1, 'most']],
    ['added entry', ['stations', 3, 'id'], ['stations', 0, 'id']],
    ['member of a stated entry that is inherited', ['stations', 2, 'arm'], ['stations', 1, 'arm']],
    ['inherited entry: its list', ['stations', 0, 'most'], ['stations']],
    ['inherited list: itself', ['envelope', 1, 'mass'], ['envelope']],
    ['stated part', ['mac', 'length'], ['mac', 'length']],
    ['nothing there', ['mac', 'leadingEdge'], ['mac', 'leadingEdge']],
  ])('%s', (_, whole, posted) => {
    expect(statedPath(origin, whole)).toEqual(posted);
    expect(statedPath(origin, whole.map(String)).map(String)).toEqual(posted.map(String));
  });
});

describe('without()', () => {
  test('takes a member or a named entry out, and nothing else', () => {
    expect(without(STANDING, ['stations', 'bay'])?.value).toEqual({
      ...STANDING,
      stations: STANDING.stations.slice(0, 2),
    });
    expect(without(STANDING, ['stations', 'bay', 'most'])?.value).toMatchObject({
      stations: [{}, {}, { id: 'bay', arm: 20 }],
    });
    expect(without(STANDING, ['name'])?.value).not.toHaveProperty('name');
  });

  test.each([[[]], [['nothing']], [['stations', 'sidecar']], [['stations', '0']], [['envelope', '0']], [['toString']]])(
    'knows no %j',
    (path) => expect(without(STANDING, path)).toBeUndefined(),
  );
});

describe('differences()', () => {
  test('names each part by members and names of entries', () => {
    const now = plain(STANDING) as typeof STANDING;
    now.stations = now.stations
      .filter(({ id }) => id !== 'right')
      .map((each) => (each.id === 'bay' ? { ...each, most: 15 } : each));
    now.envelope = [{ mass: 9 }];
    expect(
      differences(STANDING, now, [])
        .map(({ part }) => part)
        .sort(),
    ).toEqual(['/envelope', '/stations/bay/most', '/stations/right']);
  });

  test('are none of a value with itself, and some of any two that differ', () => {
    fc.assert(
      fc.property(value, value, (a, b) => {
        const [old, now] = [plain(a), plain(b)];
        expect(differences(old, old, [])).toEqual([]);
        const sorted = (of: unknown): string =>
          JSON.stringify(of, (_, each: unknown) =>
            Array.isArray(each)
              ? [...each].sort((x: { id: string }, y: { id: string }) => (x.id < y.id ? -1 : 1))
              : typeof each === 'object' && each !== null
                ? Object.fromEntries(Object.entries(each).sort())
                : each,
          );
        expect(differences(old, now, []).length > 0).toBe(sorted(old) !== sorted(now));
      }),
      { ...RUNS, numRuns: 300 },
    );
  });
});
