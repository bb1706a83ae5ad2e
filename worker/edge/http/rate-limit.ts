import type { Rate } from '../archive/workshop/workshop-calls.ts';
import { HttpProblem } from './problem.ts';

/**
 * Returns the headers for the requests that a key has left, as draft-ietf-httpapi-ratelimit-headers-10 defines them.
 */
export function rateHeaders({ limit, remaining, resetS }: Rate): Record<string, string> {
  return {
    'RateLimit-Policy': `"key";q=${limit};w=60`,
    RateLimit: `"key";r=${Math.max(0, remaining)};t=${resetS}`,
  };
}

/** Returns the problem for a key that has used all its requests. */
export function tooMany(rate: Rate): HttpProblem {
  const headers = { ...rateHeaders(rate), 'Retry-After': String(rate.resetS) };
  return new HttpProblem('too-many-requests', `A key may make ${rate.limit} requests a minute`, { headers });
}
