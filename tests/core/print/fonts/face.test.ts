import { expect, test } from 'vitest';
import {
  BUILT_FACES,
  FACE_CHARACTERS,
  type FaceName,
  kerning,
  textWidthPt,
} from '../../../../worker/core/print/fonts/face.ts';
import { unprintableIn } from '../../../../worker/core/text/printable.ts';

const faces = Object.keys(BUILT_FACES) as FaceName[];

test('textWidthPt() sets figures of one width, so that equal decimals stand in line', () => {
  for (const face of faces) {
    expect(new Set([...'0123456789'].map((figure) => textWidthPt(figure, face, 10))).size).toBe(1);
    expect(textWidthPt('111', face, 10)).toBeCloseTo(textWidthPt('174', face, 10), 9);
  }
});

// Source Sans 3.052 Regular, shaped by HarfBuzz (harfbuzzjs 1.6.4) without ligatures; all 8,836 pairs of ASCII signs agreed in all three faces.
test.each([
  ['A', 'V', -14],
  ['T', 'o', -66],
  ['P', '.', -112],
  ['L', 'T', -120],
  ['n', 'n', 0],
])('kerning() of %s%s is what a shaping engine gives', (left, right, thousandths) => {
  expect(kerning('regular', left.charCodeAt(0), right.charCodeAt(0))).toBe(thousandths);
});

test('FACE_CHARACTERS holds nothing that the gate would report', () => {
  expect(unprintableIn(String.fromCodePoint(...FACE_CHARACTERS))).toEqual([]);
});
