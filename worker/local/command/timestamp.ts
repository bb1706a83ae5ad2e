import { UsageError } from './command.ts';

/** Timestamp from `--at`; now if it is absent. */
export function timestampFrom(at: string | undefined): string {
  const time = new Date(at ?? Date.now());
  if (!Number.isNaN(time.getTime())) return time.toISOString();
  throw new UsageError(`--at must be a time such as 2026-11-05T15:00:00Z, not ${at}`);
}
