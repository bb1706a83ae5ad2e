import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Computing } from './formula.ts';

const ROOT = join(import.meta.dirname, '../..');

/** Place of a function, and the source that its comment names. */
export interface Origin {
  name: string;
  file: string;
  /** Undefined if the comment names none. */
  source: string | undefined;
}

const EXPORTED = /(?:\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n)?export function (\w+)/g;

/** Exported functions of `worker/core/calc` and `worker/core/units`, by name. */
export const ORIGINS: ReadonlyMap<string, Origin> = new Map(
  globSync('worker/core/{calc,units}/**/*.ts', { cwd: ROOT })
    .toSorted()
    .flatMap((file) =>
      [...readFileSync(join(ROOT, file), 'utf8').matchAll(EXPORTED)].map(
        ([, comment = '', name = '']) => [name, { name, file, source: sourceIn(comment) }] as const,
      ),
    ),
);

/** Returns the text after `@source`, up to the next tag. */
function sourceIn(comment: string): string | undefined {
  const text = comment.replaceAll(/\n\s*\*/g, '\n').replaceAll(/\s+/g, ' ');
  return /@source (.*?)(?= @\w|$)/.exec(text)?.[1]?.trim();
}

/**
 * Returns the place and the source of a function.
 *
 * @throws RangeError if its comment names no source
 * @throws RangeError if neither folder exports the function
 */
export function originOf({ name }: Computing): Origin & { source: string } {
  const origin = ORIGINS.get(name);
  if (!origin) throw new RangeError(`Cannot find the source of a formula: no stage of computing exports ${name}`);
  const { source } = origin;
  if (source === undefined) throw new RangeError(`Cannot tell the source of ${name}(): its comment has no @source`);
  return { ...origin, source };
}
