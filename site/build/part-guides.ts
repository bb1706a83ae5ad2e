import { readFileSync } from 'node:fs';
import { Html } from '../../worker/local/markup/html.ts';
import { contentPath, markupOf } from './prose.ts';

/** Guides to each part of the record, by its name: what to know before filling it in. */
export const PART_GUIDES: ReadonlyMap<string, Html> = new Map(
  readFileSync(contentPath('parts'), 'utf8')
    .split(/^## /m)
    .slice(1)
    .map((section) => {
      const [name = '', ...lines] = section.split('\n');
      return [name, new Html(markupOf(lines.join('\n')))];
    }),
);
