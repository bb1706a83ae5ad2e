import { element } from '../element.ts';
import { table } from '../shop/table.ts';
import type { ComparisonGroup } from '../thread/protocol.ts';

/** Returns tables that compare two packs. A word marks each difference, not only a colour. */
export function comparisonTables(groups: readonly ComparisonGroup[], before: string): HTMLElement[] {
  return groups.map(({ name, rows }) => {
    const heading = element('h3', {}, name);
    if (rows.length === 0) return element('section', {}, heading, element('p', {}, 'The same as before.'));
    const compared = table(
      ['What', before, 'Now'],
      rows.map((row) => [row.name, row.before, row.now]),
    );
    compared.querySelectorAll('tbody tr').forEach((line, index) => {
      line.classList.toggle('differs', rows[index]?.before !== rows[index]?.now);
    });
    return element('section', {}, heading, compared);
  });
}
