import { UsageError } from './command.ts';

/** The only thing that is named without an option. */
export function onlyOne(positionals: readonly string[], what: string): string {
  const [named, more] = positionals;
  if (named === undefined) throw new UsageError(`${what} must be named`);
  if (more !== undefined) throw new UsageError(`${what} alone is named: ${more} is one too many`);
  return named;
}
