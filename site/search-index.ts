import { parseFragment, type DefaultTreeAdapterTypes as Tree } from 'parse5';
import type { SearchEntry } from './client/search/entry.ts';
import type { Page } from './page.ts';

const HEADINGS = new Set(['h2', 'h3', 'h4', 'th']);

/** What can be found: every page, and every place in it that has a heading and an address of its own. */
export function searchEntries(pages: readonly Page[]): SearchEntry[] {
  return pages.flatMap((page) => {
    const whole: SearchEntry = { id: page.path, title: page.title, page: page.title, text: page.description };
    const entries = [whole];
    collect(parseFragment(page.body.markup).childNodes, page, entries);
    return entries.map((entry) => ({ ...entry, text: oneLine(entry.text) }));
  });
}

/** Text goes to the heading before it. */
function collect(nodes: readonly Tree.ChildNode[], page: Page, entries: SearchEntry[]): void {
  for (const node of nodes) {
    const latest = entries.at(-1);
    if ('value' in node && latest) latest.text += ` ${node.value}`;
    if (!('childNodes' in node) || node.tagName === 'script') continue;
    const id = node.attrs.find(({ name }) => name === 'id')?.value;
    if (id !== undefined && HEADINGS.has(node.tagName)) {
      entries.push({ id: `${page.path}#${id}`, title: titleOf(node), page: page.title, text: '' });
    } else collect(node.childNodes, page, entries);
  }
}

function titleOf(node: Tree.Element): string {
  const texts = node.childNodes.map((child) =>
    'value' in child ? child.value : 'childNodes' in child ? titleOf(child) : '',
  );
  return oneLine(texts.join(' '));
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();
