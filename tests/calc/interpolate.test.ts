import { expect, test } from 'vitest';
import { interpolate } from '../../worker/calc/interpolate.ts';

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
