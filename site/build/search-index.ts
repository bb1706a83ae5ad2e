import { parseFragment, type DefaultTreeAdapterTypes as Tree } from 'parse5';
import type { SearchEntry } from '../browser/search/entry.ts';
import type { Page } from './page.ts';

const HEADINGS = new Set(['h2', 'h3', 'h4', 'th']);
/** Elements whose first child is their heading. */
const HEADED = new Set(['div', 'section']);
/** Elements without words. */
const WORDLESS = new Set(['script', 'math']);

/** Returns the search entries: every page, and every part of it with a heading and an address. */
export function searchEntries(pages: readonly Page[]): SearchEntry[] {
  return pages.flatMap((page) => {
    const whole: SearchEntry = { id: page.path, title: page.title, page: page.title, text: page.description };
    const entries = [whole];
    collect(parseFragment(page.body.markup).childNodes, page, entries);
    return entries.map((entry) => ({ ...entry, text: oneLine(entry.text) }));
  });
}

/** Collects entries; text belongs to the heading before it. */
function collect(nodes: readonly Tree.ChildNode[], page: Page, entries: SearchEntry[]): void {
  for (const node of nodes) {
    const latest = entries.at(-1);
    if ('value' in node && latest) latest.text += ` ${node.value}`;
    if (!('childNodes' in node) || WORDLESS.has(node.tagName)) continue;
    const id = node.attrs.find(({ name }) => name === 'id')?.value;
    if (id !== undefined && HEADINGS.has(node.tagName)) {
      entries.push({ id: `${page.path}#${id}`, title: titleOf(node), page: page.title, text: '' });
      continue;
    }
    if (id !== undefined && HEADED.has(node.tagName)) {
      const [head] = node.childNodes.filter((child) => 'childNodes' in child);
      if (head) entries.push({ id: `${page.path}#${id}`, title: titleOf(head), page: page.title, text: '' });
    }
    collect(node.childNodes, page, entries);
  }
}

/** Returns the words of a heading; for the head of a row only its first element, the name of the field. */
function titleOf(node: Tree.Element): string {
  const [first] = node.childNodes;
  if (node.tagName === 'th' && first && 'childNodes' in first) return titleOf(first);
  const texts = node.childNodes.map((child) =>
    'value' in child ? child.value : 'childNodes' in child ? titleOf(child) : '',
  );
  return oneLine(texts.join(' '));
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();
