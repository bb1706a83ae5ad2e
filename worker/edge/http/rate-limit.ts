import type { Rate } from '../archive/workshop/workshop-calls.ts';
import { HttpProblem } from './problem.ts';

/** What a key has left of its share, as draft-ietf-httpapi-ratelimit-headers-10 writes it. */
export function rateHeaders({ limit, remaining, resetS }: Rate): Record<string, string> {
  return {
    'RateLimit-Policy': `"key";q=${limit};w=60`,
    RateLimit: `"key";r=${Math.max(0, remaining)};t=${resetS}`,
  };
}

/** The answer to a key that has used up its share. */
export function tooMany(rate: Rate): HttpProblem {
  const headers = { ...rateHeaders(rate), 'Retry-After': String(rate.resetS) };
  return new HttpProblem('too-many-requests', `A key may make ${rate.limit} requests a minute`, { headers });
}
