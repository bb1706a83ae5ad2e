import type { GreyPicture } from './grey-picture.ts';

// Another machine may round the smoothing of an edge to the next grey. A changed figure in small type moves five to eight pixels by
// more; where it moves fewer, the reference of the text has it.
const GREYS_LIKE = 1;
const PIXELS_LIKE = 4;

/** Where two pictures differ, black on white; null when they look alike. Of different size, everything differs. */
export function pictureDifference(one: GreyPicture, other: GreyPicture): GreyPicture | null {
  const { width, height } = one;
  if (other.width !== width || other.height !== height) return { width, height, greys: new Uint8Array(width * height) };
  const greys = one.greys.map((grey, i) => (Math.abs(grey - (other.greys[i] ?? 0)) > GREYS_LIKE ? 0 : 15));
  const pixels = greys.reduce((count, grey) => (grey === 0 ? count + 1 : count), 0);
  return pixels > PIXELS_LIKE ? { width, height, greys } : null;
}
