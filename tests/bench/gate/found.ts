import type { Bare } from './assessed.ts';

/** What the release check says of a change: a block, a caution, or nothing. */
export type Found = 'blocks' | 'caution' | 'missed';

/**
 * The heaviest finding that the unchanged record does not have.
 *
 * @param movesEntries positions in lists are others than before, so that findings are compared by field and number
 */
export function foundIn(before: readonly Bare[], after: readonly Bare[], movesEntries: boolean): Found {
  const accepted = new Set(before.filter(({ acknowledgedBy }) => acknowledgedBy !== undefined).map(({ code }) => code));
  const key = ({ code, pointer, acknowledgedBy }: Bare): string => {
    const isReopened = accepted.has(code) && acknowledgedBy === undefined;
    return `${code} ${movesEntries ? pointer.replace(/\/\d+(?=\/|$)/g, '/*') : pointer}${isReopened ? ' not accepted' : ''}`;
  };
  const known = Map.groupBy(before, key);
  const fresh = [...Map.groupBy(after, key)]
    .filter(([name, findings]) => findings.length > (known.get(name)?.length ?? 0))
    .flatMap(([, findings]) => findings);
  if (fresh.some(({ severity }) => severity === 'blocks')) return 'blocks';
  return fresh.some(({ severity }) => severity === 'caution') ? 'caution' : 'missed';
}
