import type { LayoutContext } from '../measure/layout-context.ts';
import { childTag, type Tag } from '../measure/tag.ts';
import type { MarkupNode } from '../parse/markup.ts';
import { inlineStyle, type TextStyle } from '../style/text-style.ts';
import { printableText } from './printable-text.ts';

/** Text in one style, white space collapsed; a line feed is a forced break. */
export interface Run {
  text: string;
  style: TextStyle;
  tag: Tag | null;
  link: string | null;
  pageOf: string | null;
}

// Page numbers are known only after pagination; until then, space for three digits is reserved.
const PAGE_NUMBER_ROOM = '888';

/** Returns the runs of inline content, and the ids in it. */
export function inlineRuns(content: readonly MarkupNode[], setting: LayoutContext): { runs: Run[]; ids: string[] } {
  const runs: Run[] = [];
  const ids: string[] = [];
  const visit = (node: MarkupNode, around: Omit<Run, 'text'>): void => {
    if (typeof node === 'string') {
      const text = printableText(node.replace(/[ \t\r\n\f]+/g, ' '), setting.documentId, setting.report);
      runs.push({ ...around, text });
      return;
    }
    if (node.attributes.id !== undefined) ids.push(node.attributes.id);
    if (node.name === 'br') {
      runs.push({ ...around, text: '\n' });
      return;
    }
    const style = inlineStyle(node, around.style);
    const pageOf = node.attributes['data-page-of'];
    if (pageOf !== undefined) {
      runs.push({ ...around, style, pageOf, text: PAGE_NUMBER_ROOM });
      return;
    }
    const href = node.attributes.href;
    const inside = href === undefined ? { ...around, style } : { ...around, style, ...linked(href, around.tag) };
    for (const child of node.children) visit(child, inside);
  };
  for (const node of content) visit(node, { style: setting.text, tag: setting.tag, link: null, pageOf: null });
  return { runs, ids };
}

function linked(href: string, tag: Tag | null): Pick<Run, 'link' | 'tag'> {
  if (!href.startsWith('#')) throw new Error(`Cannot typeset link: href must begin with #: current value is "${href}"`);
  return { link: href.slice(1), tag: childTag(tag, 'Link') };
}
