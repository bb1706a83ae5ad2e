import { DOCUMENT_KINDS } from '../pack/documents.ts';
import type { Markup, MarkupNode } from '../print/parse/markup.ts';
import { parseArticle } from '../print/parse/parse-article.ts';

// Articles are named after their document, its modification or its number; nothing else of ours has an id.
const ARTICLE_NAME = /^(cover|record-of-issue|modification-[a-z0-9_-]+|annex-\d+)$/;
const DOCUMENT_NAMES = new Set(DOCUMENT_KINDS.map(({ template }) => template));

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

// Colours by name or figure alone: a browser fetches what an address names, and nothing of ours is painted by one.
function isInner({ name, attributes }: Markup): boolean {
  const { href, src, id, fill = '', stroke = '' } = attributes;
  const isNamed = id === undefined || (name === 'article' && (DOCUMENT_NAMES.has(id) || ARTICLE_NAME.test(id)));
  const isPlain = !fill.includes('(') && !stroke.includes('(');
  return isNamed && isPlain && (href === undefined || href.startsWith('#')) && (src === undefined || PICTURE.test(src));
}
