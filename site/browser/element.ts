type Child = Node | string;

/**
 * An element with what it holds. Text stands as text, whatever signs are in it.
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

/** The element of that kind under that id: a page and its code are built together, so it is there. */
export function byId<Kind>(id: string, kind: new () => Kind): Kind {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`The page lacks #${id}`);
}
