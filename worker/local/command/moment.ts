import { UsageError } from './command.ts';

/** The moment that `--at` names, or the present one. */
export function momentFrom(at: string | undefined): string {
  const moment = new Date(at ?? Date.now());
  if (!Number.isNaN(moment.getTime())) return moment.toISOString();
  throw new UsageError(`--at must be a moment, as 2026-11-05T15:00:00Z: it is ${at}`);
}
