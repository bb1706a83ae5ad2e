import type { Paper } from '../paper.ts';
import type { Markup } from '../parse/markup.ts';
import type { PrintFinding } from '../print-job.ts';
import { BODY } from '../style/text-style.ts';
import { flow } from './flow.ts';
import { type Strip, withItem } from './strip.ts';
import type { Tag } from './tag.ts';

/** The root of the structure tree: every document of the job stands below it. */
export const DOCUMENT_TAG: Tag = { role: 'Document', parent: null };

/** Measures one article in the column of a paper: a list of strips, each of known height. */
export function measureArticle(
  article: Markup,
  documentId: string,
  paper: Paper,
  report: (finding: PrintFinding) => void,
): Strip[] {
  const language = article.attributes.lang;
  const tag: Tag = { role: 'Art', parent: DOCUMENT_TAG, ...(language === undefined ? {} : { language }) };
  const { columnPt, bodyPt } = paper;
  const strips = flow(article.children, { columnPt, bodyPt, scale: 1, text: BODY, tag, documentId, report });
  const ids = new Set([documentId, article.attributes.id ?? documentId]);
  return [...ids].reduce((named, id) => withItem(named, { kind: 'anchor', id }), strips);
}
