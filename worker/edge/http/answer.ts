import type { Reached } from '../archive/archive.ts';
import { HttpProblem } from './problem.ts';

/** Returns a JSON response. The archive may change, so caches do not keep it unless the caller says so. */
export function json(body: unknown, status = 200, headers: Readonly<Record<string, string>> = {}): Response {
  const fixed = { 'Content-Type': 'application/json', 'Cache-Control': 'private, no-cache' };
  return new Response(`${JSON.stringify(body, null, 2)}\n`, { status, headers: { ...fixed, ...headers } });
}

/** Unwraps a result of the archive; a failure to reach it becomes 503, damaged data 500. */
export function orUnavailable<T>(outcome: Reached<T>): T {
  if (outcome.ok) return outcome.value;
  throw outcome.reason === 'damaged'
    ? new ArchiveDamaged(outcome.what, outcome.remedy)
    : new ArchiveUnavailable(outcome.cause);
}

/** Unwraps a result of the archive, or null if the data is damaged: for data that is repaired by storing it again. */
export const orNone = <T>(outcome: Reached<T | null>): T | null =>
  !outcome.ok && outcome.reason === 'damaged' ? null : orUnavailable(outcome);

/** Returns the cause of a failure, for the log. */
export const causeOf = (outcome: Exclude<Reached<unknown>, { ok: true }>): string =>
  outcome.reason === 'damaged' ? outcome.what : outcome.cause;

/** Problem with the error of the archive, for the log only. */
export class ArchiveUnavailable extends HttpProblem {
  readonly reason: string;

  constructor(cause: string) {
    super('unavailable', 'Send the same request again shortly; if it fails again, check the log of the service');
    this.reason = cause;
  }
}

/** Problem with the name of the damaged file or row, for the log only. */
export class ArchiveDamaged extends HttpProblem {
  readonly file: string;

  constructor(file: string, remedy = 'Bring it back from an export, file by file: slipmark import') {
    super('damaged', `Do not use what is stored of it. ${remedy}`);
    this.file = file;
  }
}

/** Returns a value that must exist; else throws 404. */
export function orNotFound<T>(value: T | null | undefined, what: string): T {
  if (value === null || value === undefined) throw new HttpProblem('not-found', `There is no ${what}`);
  return value;
}
