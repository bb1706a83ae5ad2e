type Child = Node | string;

/**
 * Creates an element with children. Text is inserted as text, never parsed as markup.
 *
 * @example element('p', { className: 'small' }, 'Released by ', element('strong', {}, name))
 */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  Object.assign(made, properties);
  for (const child of children) made.appendChild(typeof child === 'string' ? document.createTextNode(child) : child);
  return made;
}

/** Returns the element with an id. It exists, because a page and its code are built together. */
export function byId<Kind>(id: string, kind: new () => Kind): Kind {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`The page lacks #${id}`);
}
