import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';
import type { Markup, MarkupNode } from './markup.ts';
import { SUBSET } from './subset.ts';

// parse5 is the parser of the HTML standard: code of ours would have to escape and unescape by rules of ours.

type Source = DefaultTreeAdapterTypes.Element;

function isElement(node: DefaultTreeAdapterTypes.ChildNode): node is Source {
  return 'tagName' in node;
}

function attributesOf(source: Source): Record<string, string> {
  const allowed = SUBSET[source.tagName];
  if (!allowed)
    throw new Error(`Cannot parse article: element must be in the subset: current value is <${source.tagName}>`);
  for (const { name, value } of source.attrs) {
    const known = name === 'id' || (name === 'class' ? allowed.classes.length > 0 : allowed.attributes.includes(name));
    if (!known)
      throw new Error(
        `Cannot parse article: <${source.tagName}> must not carry "${name}": current value is "${value}"`,
      );
  }
  return Object.fromEntries(source.attrs.map(({ name, value }) => [name, value]));
}

function classesOf(source: Source, attributes: Record<string, string>): Set<string> {
  const classes = new Set((attributes.class ?? '').split(/\s+/).filter((name) => name !== ''));
  for (const name of classes) {
    if (!SUBSET[source.tagName]?.classes.includes(name)) {
      throw new Error(`Cannot parse article: <${source.tagName}> must not carry class "${name}"`);
    }
  }
  return classes;
}

function toMarkup(source: Source): Markup {
  const attributes = attributesOf(source);
  const children: MarkupNode[] = [];
  for (const child of source.childNodes) {
    if (isElement(child)) children.push(toMarkup(child));
    else if ('value' in child && (SUBSET[source.tagName]?.text || /[^ \t\r\n\f]/.test(child.value))) {
      if (!SUBSET[source.tagName]?.text) {
        throw new Error(
          `Cannot parse article: <${source.tagName}> must not hold text: current value is "${child.value.trim()}"`,
        );
      }
      children.push(child.value);
    }
  }
  return { name: source.tagName, attributes, classes: classesOf(source, attributes), children };
}

// PDF/UA-1 7.4.2: a heading is max. one level below the heading before it.
function checkHeadings(article: Markup): void {
  let level = 0;
  const visit = (node: MarkupNode): void => {
    if (typeof node === 'string') return;
    if (/^h[1-3]$/.test(node.name)) {
      const next = Number(node.name.slice(1));
      if (next > level + 1)
        throw new Error(`Cannot parse article: <${node.name}> must not follow a heading of level ${level}`);
      level = next;
    }
    node.children.forEach(visit);
  };
  visit(article);
}

/**
 * Parses one document of the HTML subset.
 *
 * Throws on markup outside the subset: templates are ours, so that is our error and never the record's.
 */
export function parseArticle(html: string): Markup {
  const roots = parseFragment(html).childNodes.filter(
    (node) => isElement(node) || ('value' in node && node.value.trim() !== ''),
  );
  const root = roots[0];
  if (roots.length !== 1 || !root || !isElement(root) || root.tagName !== 'article') {
    throw new Error('Cannot parse article: the HTML must be one <article>');
  }
  const article = toMarkup(root);
  checkHeadings(article);
  return article;
}
