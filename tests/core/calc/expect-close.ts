import { expect } from 'vitest';

/** Expects two trees to be alike, numbers to within a share of the larger and a floor for those near zero. */
export function expectClose(actual: unknown, expected: unknown, share: number, path = ''): void {
  if (typeof actual === 'number' && typeof expected === 'number') {
    const allowed = share * Math.max(Math.abs(actual), Math.abs(expected), 1);
    const isClose = Object.is(actual, expected) || Math.abs(actual - expected) <= allowed;
    expect(isClose, `${path}: ${actual} against ${expected}`).toBe(true);
    return;
  }
  if (typeof actual !== 'object' || actual === null || typeof expected !== 'object' || expected === null) {
    expect(actual, path).toEqual(expected);
    return;
  }
  expect(Object.keys(actual), path).toEqual(Object.keys(expected));
  for (const [key, value] of Object.entries(actual))
    expectClose(value, (expected as Record<string, unknown>)[key], share, `${path}/${key}`);
}
