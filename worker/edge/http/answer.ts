import type { Reached } from '../archive/archive.ts';
import { HttpProblem } from './problem.ts';

/** A JSON answer; what stands in the archive may change, so it is not kept by caches unless the caller says so. */
export function json(body: unknown, status = 200, headers: Readonly<Record<string, string>> = {}): Response {
  const fixed = { 'Content-Type': 'application/json', 'Cache-Control': 'private, no-cache' };
  return new Response(`${JSON.stringify(body, null, 2)}\n`, { status, headers: { ...fixed, ...headers } });
}

/** The archive's answer; a failure to reach it becomes 503, damage to what it holds 500. */
export function orUnavailable<T>(outcome: Reached<T>): T {
  if (outcome.ok) return outcome.value;
  throw outcome.reason === 'damaged'
    ? new ArchiveDamaged(outcome.what, outcome.remedy)
    : new ArchiveUnavailable(outcome.cause);
}

/** The archive's answer, or null where what it holds is damaged: for what is mended by putting it there again. */
export const orNone = <T>(outcome: Reached<T | null>): T | null =>
  !outcome.ok && outcome.reason === 'damaged' ? null : orUnavailable(outcome);

/** What the log says of an answer that did not come. */
export const causeOf = (outcome: Exclude<Reached<unknown>, { ok: true }>): string =>
  outcome.reason === 'damaged' ? outcome.what : outcome.cause;

/** A refusal that remembers what the archive said, for the log only. */
export class ArchiveUnavailable extends HttpProblem {
  readonly reason: string;

  constructor(cause: string) {
    super('unavailable', 'Send the same request again shortly; if that goes on, look into the log of the service');
    this.reason = cause;
  }
}

/** A refusal that remembers which stored file or row is not what was kept, for the log only. */
export class ArchiveDamaged extends HttpProblem {
  readonly file: string;

  constructor(file: string, remedy = 'Bring it back from an export, file by file: slipmark import') {
    super('damaged', `Do not use what is stored of it. ${remedy}`);
    this.file = file;
  }
}

/** Something that has to be there. */
export function orNotFound<T>(value: T | null | undefined, what: string): T {
  if (value === null || value === undefined) throw new HttpProblem('not-found', `There is no ${what}`);
  return value;
}
