import type { Item } from '../measure/item.ts';
import type { Canvas } from './canvas.ts';
import { drawDrawing } from './draw-drawing.ts';
import { drawLine, type PlacedLink } from './draw-line.ts';
import { number } from './pdf-text.ts';
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
}

const TYPE_ABOVE_PT = 10;

/** Draws items from a point of the page; y of the point in PDF coordinates. The items decide all places, this decides nothing. */
export function drawItems(surface: Surface, items: readonly Item[], xPt: number, yPt: number): void {
  for (const item of items) drawItem(surface, item, xPt, yPt);
}

function drawItem(surface: Surface, item: Item, xPt: number, yPt: number): void {
  const { canvas, structure, marks, page } = surface;
  switch (item.kind) {
    case 'group':
      drawItems(surface, item.items, xPt + item.xPt, yPt - item.yPt);
      break;
    case 'line':
      marks.links.push(...drawLine(canvas, item, xPt + item.xPt, yPt - item.baselinePt, surface.startPage));
      break;
    case 'rule': {
      const [from, to] = [item.fromPt, item.toPt].map(([x, y]) => `${number(xPt + x)} ${number(yPt - y)}`);
      canvas.enter(null);
      canvas.write(
        `${item.dashed ? '[3 2] 0 d ' : ''}${number(item.weightPt)} w ${from} m ${to} l S${item.dashed ? ' [] 0 d' : ''}`,
      );
      break;
    }
    case 'fill': {
      const { widthPt, heightPt, grey } = item;
      const corner = `${number(xPt + item.xPt)} ${number(yPt - item.yPt - heightPt)}`;
      canvas.enter(null);
      canvas.write(`${number(grey)} g ${corner} ${number(widthPt)} ${number(heightPt)} re f 0 g`);
      break;
    }
    case 'drawing': {
      const box = drawDrawing(canvas, item, xPt + item.xPt, yPt - item.yPt);
      if (item.tag) structure.element(item.tag).box = box;
      break;
    }
    case 'anchor':
      // A repeated table head stands for the first one.
      if (!marks.anchors.has(item.id)) marks.anchors.set(item.id, { page, yPt: yPt + TYPE_ABOVE_PT });
      break;
    case 'bookmark':
      marks.bookmarks.push({ level: item.level, title: item.title, page, yPt: yPt + TYPE_ABOVE_PT });
      break;
    case 'present':
      structure.element(item.tag);
  }
}
