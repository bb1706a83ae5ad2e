import type { Rate } from './workshop-calls.ts';

const WINDOW_MS = 60_000;

/**
 * Counter of the requests of each key in windows of a minute. In memory only: a restart gives every key a new window.
 */
export interface Rates {
  take(key: string, nowMs: number, limit: number): Rate;
}

export function createRates(): Rates {
  let windowMs = 0;
  const used = new Map<string, number>();
  return {
    take(key, nowMs, limit) {
      const window = Math.floor(nowMs / WINDOW_MS) * WINDOW_MS;
      if (window !== windowMs) used.clear();
      windowMs = window;
      const count = (used.get(key) ?? 0) + 1;
      used.set(key, count);
      return { limit, remaining: limit - count, resetS: Math.ceil((window + WINDOW_MS - nowMs) / 1000) };
    },
  };
}
