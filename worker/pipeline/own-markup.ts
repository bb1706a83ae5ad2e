import type { Markup, MarkupNode } from '../print/parse/markup.ts';
import { parseArticle } from '../print/parse/parse-article.ts';

const PICTURE = /^attachments\/[0-9a-f]{64}$/;

/**
 * Whether the HTML of a document is of the kind that our templates make: the elements and attributes of the subset, pictures by the digest
 * of a file of the pack, references within the pack, and nothing else. What comes from elsewhere is shown on a page only then.
 */
export function isOwnMarkup(html: string): boolean {
  // Comments and declarations are in no template, and browsers read them in ways of their own.
  if (/<[!?]/.test(html)) return false;
  try {
    return holds(parseArticle(html));
  } catch {
    return false;
  }
}

function holds(node: MarkupNode): boolean {
  return typeof node === 'string' || (isInner(node) && node.children.every(holds));
}

function isInner({ attributes }: Markup): boolean {
  const { href, src } = attributes;
  return (href === undefined || href.startsWith('#')) && (src === undefined || PICTURE.test(src));
}
