/** An element of the structure tree (ISO 32000-1, 14.7). It enters the tree with the first drawing of its content. */
export interface Tag {
  role: string;
  parent: Tag | null;
  alt?: string;
  language?: string;
  scope?: 'Column' | 'Row' | 'Both';
  columnSpan?: number;
  numbering?: 'Disc' | 'Decimal' | 'None';
}

/** Returns a tag below another. Below an artefact everything is an artefact. */
export function childTag(parent: Tag | null, role: string, more: Omit<Tag, 'role' | 'parent'> = {}): Tag | null {
  return parent && { role, parent, ...more };
}
