import { UsageError } from './command.ts';

/** Reads the one argument without an option. */
export function onlyOne(positionals: readonly string[], what: string): string {
  const [named, more] = positionals;
  if (named === undefined) throw new UsageError(`Missing argument: ${what}`);
  if (more !== undefined) throw new UsageError(`Unexpected argument: ${more}`);
  return named;
}

/** @throws UsageError naming the first argument of a command that takes options only */
export function none([unexpected]: readonly string[]): void {
  if (unexpected !== undefined) throw new UsageError(`Unexpected argument: ${unexpected}`);
}
