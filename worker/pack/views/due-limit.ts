import type { Printer } from '../../units/print.ts';

/** The limits of something to be done, such as `5 Jan 2027 or 1 250.0 h`; undefined where there is none. */
export function dueLimit(say: Printer, date: string | undefined, hours: number | undefined): string | undefined {
  return eitherOf(say, date && say.date(date), hours === undefined ? undefined : `${say.plain(hours, 1)}\u00a0h`);
}

/** Two limits of which either may be missing. */
export function eitherOf(say: Printer, first: string | undefined, second: string | undefined): string | undefined {
  return first && second ? say.words`${first} or ${second}` : first || second || undefined;
}
