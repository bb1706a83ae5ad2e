/** An element of the HTML subset, checked against it. */
export interface Markup {
  name: string;
  attributes: Readonly<Record<string, string>>;
  classes: ReadonlySet<string>;
  children: readonly MarkupNode[];
}

/** Text is a plain string, with the white space of the source. */
export type MarkupNode = Markup | string;

/** Returns the child elements of an element, without text. */
export function childElements(element: Markup): Markup[] {
  return element.children.filter((child) => typeof child !== 'string');
}

/** Returns all text in an element in reading order, white space collapsed. */
export function textOf(node: MarkupNode): string {
  const collect = (part: MarkupNode): string => (typeof part === 'string' ? part : part.children.map(collect).join(''));
  return collect(node)
    .replace(/[ \t\r\n\f]+/g, ' ')
    .trim();
}
