/**
 * Returns the ids of articles that are named after entries of the record, such as modifications: lower case, without
 * dots, and different even where two entries differ in nothing else.
 *
 * @example articleIds('modification', ['M1', 'm1', 'M.2'])  // modification-m1, modification-m1_2, modification-m-2
 */
export function articleIds(prefix: string, entries: readonly string[]): string[] {
  const taken = new Set<string>();
  return entries.map((entry) => {
    const plain = `${prefix}-${entry.toLowerCase().replaceAll('.', '-')}`;
    let id = plain;
    for (let copy = 2; taken.has(id); copy++) id = `${plain}_${copy}`;
    taken.add(id);
    return id;
  });
}
