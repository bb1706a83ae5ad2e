import type { PictureSource } from '../measure/item.ts';
import type { Canvas } from './canvas.ts';
import type { PlacedLink } from './draw-line.ts';
import type { Structure } from './structure.ts';

/** Target of links and bookmarks; y in PDF coordinates. */
export interface Place {
  page: number;
  yPt: number;
}

export interface Bookmark extends Place {
  level: number;
  title: string;
}

/** Results of drawing a page apart from its content stream. */
export interface Marks {
  links: PlacedLink[];
  anchors: Map<string, Place>;
  bookmarks: Bookmark[];
}

/** Canvas of a page, and records of its items. */
export interface Surface {
  canvas: Canvas;
  structure: Structure;
  marks: Marks;
  page: number;
  startPage: Readonly<Record<string, number>>;
  /** Pictures of the page, in the order of their names. */
  pictures: PictureSource[];
}
