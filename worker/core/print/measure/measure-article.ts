import type { Paper } from '../paper.ts';
import type { Markup } from '../parse/markup.ts';
import { BODY } from '../style/text-style.ts';
import { flow } from './flow.ts';
import type { LayoutContext } from './layout-context.ts';
import { type Strip, withItem } from './strip.ts';
import type { Tag } from './tag.ts';

/** Inputs for measuring an article, in addition to its markup. */
export type ArticleSetting = Pick<LayoutContext, 'documentId' | 'report' | 'pictureOf' | 'mark' | 'say'>;

/** Root of the structure tree: every document of the job is below it. */
export const DOCUMENT_TAG: Tag = { role: 'Document', parent: null };

/** Returns the structure element of an article. */
export function articleTag(article: Markup): Tag {
  const language = article.attributes.lang;
  return { role: 'Art', parent: DOCUMENT_TAG, ...(language === undefined ? {} : { language }) };
}

/** Measures one article in the column of a sheet: a list of strips, each of known height. */
export function measureArticle(article: Markup, tag: Tag, paper: Paper, given: ArticleSetting): Strip[] {
  const { columnPt, bodyPt } = paper;
  const strips = flow(article.children, { columnPt, bodyPt, scale: 1, text: BODY, tag, ...given });
  const ids = new Set([given.documentId, article.attributes.id ?? given.documentId]);
  return [...ids].reduce((named, id) => withItem(named, { kind: 'anchor', id }), strips);
}
