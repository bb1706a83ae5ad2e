import { type Slipmark, slipmark } from '../../client/client.ts';
import { type Options, UsageError } from './command.ts';
import type { Output } from './output.ts';

/** Options of every command that speaks to a service. */
export const SERVICE_OPTIONS = {
  origin: { type: 'string', value: 'URL', help: 'where the service is; http://127.0.0.1:8787 where it is not given' },
  key: { type: 'string', value: 'KEY', help: 'a key of the workshop; may be left out where SLIPMARK_KEY is set' },
} as const satisfies Options;

/** Scripts have the time to wait until a share is full again. */
const MAX_WAITS = 20;

/** @throws UsageError where there is no key, or the address is none */
export function clientFrom(values: { origin?: string; key?: string }, output: Output): Slipmark {
  const { origin = 'http://127.0.0.1:8787', key = process.env.SLIPMARK_KEY ?? '' } = values;
  if (key === '') throw new UsageError('A key is needed: give --key, or set SLIPMARK_KEY');
  if (!/^https?:/.test(origin) || !URL.canParse(origin))
    throw new UsageError(`--origin must be a URL: it is ${origin}`);
  const onWait = (seconds: number): void => output.progress(`The service asks to wait ${seconds} s`);
  return slipmark({ origin: new URL(origin).origin, key, mostWaits: MAX_WAITS, onWait });
}
