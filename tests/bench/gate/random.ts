let drawing = '';

/** Draws another sample, and other digits and letters, than without a name. */
export function drawAs(name: string): void {
  drawing = name;
}

/** Numbers from 0 up to 1 that follow from a text: the same at each run. */
export function randomOf(seed: string): () => number {
  let state = 2_166_136_261;
  for (const letter of drawing + seed) state = Math.imul(state ^ letter.charCodeAt(0), 16_777_619);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Up to so many of a list, in its own order, the same at each run. */
export function sampled<Item>(items: readonly Item[], most: number, seed: string): Item[] {
  if (items.length <= most) return [...items];
  const random = randomOf(seed);
  const drawn = items.map((item, index) => ({ item, index, lot: random() })).sort((a, b) => a.lot - b.lot);
  return drawn
    .slice(0, most)
    .sort((a, b) => a.index - b.index)
    .map(({ item }) => item);
}
