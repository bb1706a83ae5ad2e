import type { ComparisonGroup } from '../core/protocol.ts';
import { element } from '../element.ts';

/** Two packs side by side. What differs is said by a word, not by colour alone. */
export function comparisonTables(groups: readonly ComparisonGroup[], before: string): HTMLElement[] {
  return groups.map(({ name, rows }) => {
    const heading = element('h3', {}, name);
    if (rows.length === 0) return element('section', {}, heading, element('p', {}, 'The same as before.'));
    const head = element('tr', {}, ...['', before, 'Now'].map((text) => headCell(text, 'col')));
    const body = rows.map((row) =>
      element(
        'tr',
        row.before === row.now ? {} : { className: 'differs' },
        headCell(row.name, 'row'),
        element('td', {}, row.before),
        element('td', {}, row.now),
      ),
    );
    const table = element('table', {}, element('thead', {}, head), element('tbody', {}, ...body));
    return element('section', {}, heading, element('div', { className: 'scroll', tabIndex: 0 }, table));
  });
}

const headCell = (text: string, scope: 'col' | 'row'): HTMLElement =>
  text === '' ? element('td', {}) : element('th', { scope }, text);
