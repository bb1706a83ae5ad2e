import { expect, test } from 'vitest';
import { pathSegments, shapeSegments } from '../../../../worker/core/print/measure/drawing-path.ts';

test('pathSegments() follows horizontal and vertical lines from the point before', () => {
  expect(pathSegments('M1 2H5V7Z')).toEqual([
    { op: 'move', to: [1, 2] },
    { op: 'line', to: [5, 2] },
    { op: 'line', to: [5, 7] },
    { op: 'close' },
  ]);
});

test('pathSegments() takes further pairs as lines and numbers run together', () => {
  expect(pathSegments('M0,0 10-5 1e1,.5')).toEqual([
    { op: 'move', to: [0, 0] },
    { op: 'line', to: [10, -5] },
    { op: 'line', to: [10, 0.5] },
  ]);
});

test('pathSegments() throws for commands outside the subset', () => {
  expect(() => pathSegments('M0 0 l5 5')).toThrow('current value is l');
  expect(() => pathSegments('M0 0 A5 5 0 0 1 9 9')).toThrow('current value is A');
});

test('shapeSegments() draws a circle that stays on its radius', () => {
  const ends = shapeSegments('circle', { cx: '10', cy: '20', r: '5' }).flatMap((segment) =>
    segment.op === 'close' ? [] : [segment.to.slice(-2)],
  );
  for (const [x = 0, y = 0] of ends) expect(Math.hypot(x - 10, y - 20)).toBeCloseTo(5, 9);
});
