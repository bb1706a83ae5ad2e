import { type Slipmark, slipmark } from '../../client/client.ts';
import { type Options, UsageError } from './command.ts';
import type { Output } from './output.ts';

/** Options of every command that calls a service. */
export const SERVICE_OPTIONS = {
  origin: { type: 'string', value: 'URL', help: 'address of the service (default: http://127.0.0.1:8787)' },
  key: { type: 'string', value: 'KEY', help: 'key of the workshop (default: $SLIPMARK_KEY)' },
} as const satisfies Options;

/** Retries after 429 and 503; a script can wait longer than a page. */
const MAX_WAITS = 20;

/** @throws UsageError if there is no key, or the origin is not a URL */
export function clientFrom(values: { origin?: string; key?: string }, output: Output): Slipmark {
  const { origin = 'http://127.0.0.1:8787', key = process.env.SLIPMARK_KEY ?? '' } = values;
  if (key === '') throw new UsageError('Key missing: use --key, or set SLIPMARK_KEY');
  if (!/^https?:/.test(origin) || !URL.canParse(origin)) throw new UsageError(`--origin must be a URL, not ${origin}`);
  const onWait = (seconds: number): void => output.progress(`Waiting ${seconds} s for the service`);
  return slipmark({ origin: new URL(origin).origin, key, mostWaits: MAX_WAITS, onWait });
}
