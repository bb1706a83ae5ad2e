// Search page: the index comes with the site and is searched in the browser.
import MiniSearch, { type SearchResult } from 'minisearch';
import { byId, element } from './element.ts';
import type { SearchEntry } from './search/entry.ts';
import { excerpt } from './search/excerpt.ts';

// MiniSearch over an index (110 kB gzip) that only this page loads: a static site has no server to search, and the
// content policy allows no forms.

const MAX_SHOWN = 40;

const field = byId('query', HTMLInputElement);
const list = byId('found', HTMLElement);
const count = byId('count', HTMLElement);

const entries = (await (await fetch('/assets/search.json')).json()) as SearchEntry[];
const index = new MiniSearch<SearchEntry>({
  fields: ['title', 'page', 'text'],
  storeFields: ['title', 'page', 'text'],
  searchOptions: { boost: { title: 4, page: 2 }, prefix: true, fuzzy: 0.15, combineWith: 'AND' },
});
index.addAll(entries);

function show(): void {
  const query = field.value.trim();
  const found = query === '' ? [] : index.search(query);
  list.replaceChildren(...found.slice(0, MAX_SHOWN).map(lineOf));
  count.textContent = query === '' ? `${entries.length} places to find.` : countOf(found.length);
  history.replaceState(null, '', query === '' ? '/search' : `/search?q=${encodeURIComponent(query)}`);
}

function countOf(places: number): string {
  if (places === 0) return 'Nothing has all of these words.';
  return places > MAX_SHOWN ? `${places} places; the best ${MAX_SHOWN} are shown.` : `${places} places.`;
}

function lineOf({ id, title, page, text, terms }: SearchResult): HTMLElement {
  const pieces = excerpt(text, terms).map((piece) => (piece.isWord ? element('mark', {}, piece.text) : piece.text));
  const where = title === page ? '' : element('span', { className: 'small' }, ` ${page}`);
  return element('li', {}, element('a', { href: id }, title), where, element('p', { className: 'small' }, ...pieces));
}

field.value = new URLSearchParams(location.search).get('q') ?? '';
field.addEventListener('input', show);
show();
