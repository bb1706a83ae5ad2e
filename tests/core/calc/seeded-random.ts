/** Random numbers that are the same on every run (T. Ettinger's mulberry32; statistics good enough for some 10⁵ draws). */
export function seededRandom(seed: number): { uniform(limit: number): number; normal(standard: number): number } {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    /** Evenly between plus and minus a limit. */
    uniform: (limit) => (2 * next() - 1) * limit,
    /** Box and Muller. */
    normal: (standard) => standard * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
}
