import { expect, test } from 'vitest';
import { colourProfile } from '../../../../worker/core/print/file/colour-profile.ts';

test('colourProfile() is a display profile whose tags lie within it', () => {
  const bytes = colourProfile();
  const view = new DataView(bytes.buffer);
  expect(view.getUint32(0)).toBe(bytes.length);
  expect(new TextDecoder().decode(bytes.slice(12, 24))).toBe('mntrRGB XYZ ');
  for (let i = 0; i < view.getUint32(128); i++) {
    const at = 132 + 12 * i;
    expect(view.getUint32(at + 4) + view.getUint32(at + 8)).toBeLessThanOrEqual(bytes.length);
    expect(view.getUint32(at + 4) % 4).toBe(0);
  }
});

// The three primaries at full strength make the white of the connection space, D50 (ICC.1, 7.2.16).
test('colourProfile() has primaries that add up to its white point', () => {
  const bytes = colourProfile();
  const view = new DataView(bytes.buffer);
  const tags = new Map<string, number>();
  for (let i = 0; i < view.getUint32(128); i++) {
    const at = 132 + 12 * i;
    tags.set(new TextDecoder().decode(bytes.slice(at, at + 4)), view.getUint32(at + 4));
  }
  const xyz = (tag: string): number[] => [0, 1, 2].map((n) => view.getInt32((tags.get(tag) ?? 0) + 8 + 4 * n) / 65536);
  const white = xyz('wtpt');
  const sums = [0, 1, 2].map((n) => ['rXYZ', 'gXYZ', 'bXYZ'].reduce((total, tag) => total + (xyz(tag)[n] ?? 0), 0));
  for (const n of [0, 1, 2]) expect(sums[n]).toBeCloseTo(white[n] ?? 0, 3);
});
