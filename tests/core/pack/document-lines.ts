import { parseFragment } from 'parse5';
import { draftDocuments } from '../../../worker/core/core.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, posted } from './fixture.ts';

interface Node {
  nodeName: string;
  value?: string;
  childNodes?: Node[];
}

/** The documents of a visit as lines of plain text, a line for each row, paragraph or item. */
export interface DocumentLines {
  /** All lines of the documents whose id fits. */
  of(id: RegExp): string[];
}

/** Elements that end a line. */
const LINES = new Set(['tr', 'p', 'li', 'div', 'h1', 'h2', 'h3', 'caption', 'figcaption', 'header']);

/** What a reader meets, without drawings, each cell apart from the next. */
function textOf({ nodeName, value = '', childNodes = [] }: Node): string {
  if (nodeName === '#text') return value;
  if (nodeName === 'svg') return '';
  const within = childNodes.map(textOf).join(LINES.has(nodeName) ? ' ' : '');
  return LINES.has(nodeName) ? `${within}\n` : within;
}

/**
 * Figures as a calculator shows them: no separators of thousands, points for decimals, hyphens for minus signs.
 *
 * @param language German writes 1.234,5 where English writes 1 234.5
 */
export function asCalculated(text: string, language: string): string {
  const plain = text.replace(/−/g, '-').replace(/(\d)[\u2009\u202f\u00a0](?=\d{3}(?!\d))/g, '$1');
  const figures =
    language === 'de' ? plain.replace(/(\d)\.(?=\d{3}(?!\d))/g, '$1').replace(/(\d),(?=\d)/g, '$1.') : plain;
  return figures.replace(/\s+/g, ' ').trim();
}

/** The documents of a visit of the fixtures, as they are printed. */
export async function documentLines(name: string): Promise<DocumentLines> {
  const record = posted(name) as { workshop: { language?: string } };
  const at = RELEASABLE_AT[name] ?? '';
  const documents = await draftDocuments(await assessed(record, at), at);
  const lines = documents.map(({ id, html }) => ({
    id,
    lines: textOf(parseFragment(html) as unknown as Node)
      .split('\n')
      .map((line) => asCalculated(line, record.workshop.language ?? 'en'))
      .filter((line) => line !== ''),
  }));
  return { of: (wanted) => lines.filter(({ id }) => wanted.test(id)).flatMap((document) => document.lines) };
}
