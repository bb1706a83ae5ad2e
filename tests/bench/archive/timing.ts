/** Times of many requests, in milliseconds. */
export interface Times {
  p50: number;
  p99: number;
  perSecond: number;
}

function timesOf(each: readonly number[], totalMs: number): Times {
  const sorted = each.toSorted((a, b) => a - b);
  const at = (part: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))] ?? 0;
  return { p50: at(0.5), p99: at(0.99), perSecond: (each.length / totalMs) * 1000 };
}

/** One request after another. */
export async function inTurn(count: number, ask: (index: number) => Promise<unknown>): Promise<Times> {
  const each: number[] = [];
  const start = performance.now();
  for (let index = 0; index < count; index++) {
    const before = performance.now();
    await ask(index);
    each.push(performance.now() - before);
  }
  return timesOf(each, performance.now() - start);
}

/** As many at once as told, for a while. */
export async function atOnce(width: number, forMs: number, ask: (index: number) => Promise<unknown>): Promise<Times> {
  const each: number[] = [];
  const start = performance.now();
  let asked = 0;
  const lane = async (): Promise<void> => {
    while (performance.now() - start < forMs) {
      const before = performance.now();
      await ask(asked++);
      each.push(performance.now() - before);
    }
  };
  await Promise.all(Array.from({ length: width }, lane));
  return timesOf(each, performance.now() - start);
}

export function printed({ p50, p99, perSecond }: Times): string {
  const rate = perSecond >= 100 ? perSecond.toFixed(0) : perSecond.toFixed(1);
  return `p50 ${p50.toFixed(1)} ms, p99 ${p99.toFixed(1)} ms, ${rate} a second`;
}
