import type { Item } from '../measure/item.ts';
import type { Canvas } from './canvas.ts';
import { drawDrawing } from './draw-drawing.ts';
import { drawLine } from './draw-line.ts';
import { drawPicture } from './draw-picture.ts';
import { number } from './pdf-text.ts';
import type { Surface } from './surface.ts';

const TYPE_ABOVE_PT = 10;

/** Draws items from a point of the page; y of the point in PDF coordinates. The items have all positions; none is decided here. */
export function drawItems(surface: Surface, items: readonly Item[], xPt: number, yPt: number): void {
  for (const item of items) drawItem(surface, item, xPt, yPt);
}

type ItemOf<Kind extends Item['kind']> = Extract<Item, { kind: Kind }>;

function drawRule(canvas: Canvas, rule: ItemOf<'rule'>, xPt: number, yPt: number): void {
  const [from, to] = [rule.fromPt, rule.toPt].map(([x, y]) => `${number(xPt + x)} ${number(yPt - y)}`);
  const line = `${number(rule.grey ?? 0)} G ${number(rule.weightPt)} w ${from} m ${to} l S`;
  canvas.enter(null);
  canvas.write(rule.dashed ? `[3 2] 0 d ${line} [] 0 d` : line);
}

function drawFill(
  canvas: Canvas,
  { xPt: leftPt, yPt: topPt, widthPt, heightPt, grey }: ItemOf<'fill'>,
  xPt: number,
  yPt: number,
): void {
  const box = [xPt + leftPt, yPt - topPt - heightPt, widthPt, heightPt].map(number).join(' ');
  canvas.enter(null);
  canvas.write(`${number(grey)} g ${box} re f 0 g`);
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
    case 'rule':
      drawRule(canvas, item, xPt, yPt);
      break;
    case 'fill':
      drawFill(canvas, item, xPt, yPt);
      break;
    case 'drawing': {
      const box = drawDrawing(canvas, item, xPt + item.xPt, yPt - item.yPt);
      if (item.tag) structure.element(item.tag).box = box;
      break;
    }
    case 'picture':
      drawPicture(surface, item, xPt + item.xPt, yPt - item.yPt - item.heightPt);
      break;
    case 'anchor':
      // The first table head is the target, not a repeated one.
      if (!marks.anchors.has(item.id)) marks.anchors.set(item.id, { page, yPt: yPt + TYPE_ABOVE_PT });
      break;
    case 'bookmark':
      marks.bookmarks.push({ level: item.level, title: item.title, page, yPt: yPt + TYPE_ABOVE_PT });
      break;
    case 'present':
      structure.element(item.tag);
  }
}
