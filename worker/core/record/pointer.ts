/**
 * Returns the JSON pointer (RFC 6901) to a location in the record.
 *
 * @example pointer('modifications', 0, 'changes', 2)  // '/modifications/0/changes/2'
 */
export function pointer(...path: readonly PropertyKey[]): string {
  return path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

/** The steps of a JSON pointer; positions in lists are text, too. */
export function stepsOf(at: string): string[] {
  return at
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}
