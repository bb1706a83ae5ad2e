/** What chose the font that text is shown in: the operator for fonts, or a graphics state that names one. */
export interface FontChoice {
  kind: 'font' | 'state';
  name: string;
}

/** Is told what a content stream does, by the names that its resources have. */
export interface ContentWatcher {
  /** A string is shown; the font is null where none was chosen. `codes` holds one character a byte. */
  shows: (font: FontChoice | null, codes: string) => void;
  /** An external object is drawn. */
  draws: (name: string) => void;
  /** Something is painted with a pattern. */
  paints: (pattern: string) => void;
  /** A graphics state is set; the answer is whether it chooses a font. */
  sets: (state: string) => boolean;
}

/** Listens to nothing. */
export const UNWATCHED: ContentWatcher = { shows: () => {}, draws: () => {}, paints: () => {}, sets: () => false };
