import { expect, test } from 'vitest';
import { interpolate, sharedX } from '../../../../worker/core/calc/numbers/interpolate.ts';

const at = (table: [number, number][], x: number): number =>
  interpolate(
    table,
    x,
    ([a]) => a,
    ([, b]) => b,
  );

test('interpolate() is linear between lines and held outside them', () => {
  const table: [number, number][] = [
    [0, 10],
    [10, 20],
    [30, 0],
  ];
  expect([-5, 0, 5, 10, 20, 30, 99].map((x) => at(table, x))).toEqual([10, 10, 15, 20, 10, 0, 0]);
});

test('interpolate() takes the lines of a table in any order', () => {
  const rising: [number, number][] = [
    [0, 10],
    [10, 20],
    [30, 0],
  ];
  for (const table of [rising.toReversed(), [rising[1], rising[2], rising[0]] as [number, number][]])
    for (const x of [-5, 0, 5, 10, 20, 30, 99]) expect(at(table, x), String(x)).toBe(at(rising, x));
});

test('sharedX() names what two lines contradict each other about', () => {
  const x = ([value]: readonly [number, number]): number => value;
  expect(sharedX([[5, 1] as const, [0, 2] as const, [5, 3] as const], x)).toBe(5);
  expect(sharedX([[5, 1] as const, [0, 2] as const], x)).toBeUndefined();
});

test('interpolate() takes a table of one line, of none, and one that steps', () => {
  expect(at([[5, 7]], 99)).toBe(7);
  expect(at([], 1)).toBe(0);
  expect(
    at(
      [
        [0, 1],
        [5, 2],
        [5, 9],
        [10, 9],
      ],
      7,
    ),
  ).toBe(9);
});
