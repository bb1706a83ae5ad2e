import type { PictureSource } from '../measure/item.ts';
import type { Canvas } from './canvas.ts';
import type { PlacedLink } from './draw-line.ts';
import type { Structure } from './structure.ts';

/** A place that links and bookmarks lead to; y in PDF coordinates. */
export interface Place {
  page: number;
  yPt: number;
}

export interface Bookmark extends Place {
  level: number;
  title: string;
}

/** What drawing a page leaves to be written beside its content stream. */
export interface Marks {
  links: PlacedLink[];
  anchors: Map<string, Place>;
  bookmarks: Bookmark[];
}

/** What the items of a page are drawn on and noted in. */
export interface Surface {
  canvas: Canvas;
  structure: Structure;
  marks: Marks;
  page: number;
  startPage: Readonly<Record<string, number>>;
  /** The pictures of the page, in the order of their names. */
  pictures: PictureSource[];
}
