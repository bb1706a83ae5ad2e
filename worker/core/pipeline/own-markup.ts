import { DOCUMENT_KINDS } from '../pack/documents.ts';
import type { Markup, MarkupNode } from '../print/parse/markup.ts';
import { parseArticle } from '../print/parse/parse-article.ts';

// Articles are named after their document, its modification, configuration or number; no other element of ours has an id.
const ARTICLE_NAME = /^(cover|record-of-issue|(modification|loading-sheet)-[a-z0-9_-]+|annex-\d+)$/;
const DOCUMENT_NAMES = new Set(DOCUMENT_KINDS.map(({ template }) => template));

const PICTURE = /^attachments\/([0-9a-f]{64})$/;

/**
 * Whether the HTML of a document has the form of our templates: only elements and attributes of the subset, pictures by
 * the digest of a file of the pack, and references within the pack. Only then is foreign HTML shown on a page.
 */
export function isOwnMarkup(html: string): boolean {
  return ownArticle(html) !== undefined;
}

/** Returns the digests of the pictures in a document; empty if it does not have that form. */
export function picturesShown(html: string): string[] {
  const within = (node: MarkupNode): string[] =>
    typeof node === 'string' ? [] : [node.attributes.src ?? '', ...node.children.flatMap(within)];
  return within(ownArticle(html) ?? '').flatMap((source) => PICTURE.exec(source)?.[1] ?? []);
}

function ownArticle(html: string): Markup | undefined {
  // Comments and declarations are in no template, and browsers differ in how they read them.
  if (/<[!?]/.test(html)) return undefined;
  try {
    const article = parseArticle(html);
    return holds(article) ? article : undefined;
  } catch {
    return undefined;
  }
}

function holds(node: MarkupNode): boolean {
  return typeof node === 'string' || (isInner(node) && node.children.every(holds));
}

// Colours only by name or number: a browser fetches the address of a paint, and we paint nothing by address.
function isInner({ name, attributes }: Markup): boolean {
  const { href, src, id, fill = '', stroke = '' } = attributes;
  const isNamed = id === undefined || (name === 'article' && (DOCUMENT_NAMES.has(id) || ARTICLE_NAME.test(id)));
  const isPlain = !fill.includes('(') && !stroke.includes('(');
  return isNamed && isPlain && (href === undefined || href.startsWith('#')) && (src === undefined || PICTURE.test(src));
}
