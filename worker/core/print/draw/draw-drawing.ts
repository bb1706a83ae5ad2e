import type { Colour, Segment, Shape } from '../measure/drawing-shape.ts';
import type { Item } from '../measure/item.ts';
import { type Canvas, FONT_NAMES } from './canvas.ts';
import { number, ratio, showOperator } from './pdf-text.ts';

type Drawing = Extract<Item, { kind: 'drawing' }>;

const OPERATORS = { move: 'm', line: 'l', curve: 'c' } as const;

const same = (colour: Colour): boolean => colour[0] === colour[1] && colour[1] === colour[2];

function paint(colour: Colour, operators: readonly [grey: string, rgb: string]): string {
  return same(colour) ? `${ratio(colour[0])} ${operators[0]}` : `${colour.map(ratio).join(' ')} ${operators[1]}`;
}

function segmentOperators(segment: Segment): string {
  return segment.op === 'close' ? 'h' : `${segment.to.map(number).join(' ')} ${OPERATORS[segment.op]}`;
}

function shapeOperators(shape: Shape): string {
  if (shape.kind === 'text') {
    const face = shape.semibold ? 'semibold' : 'regular';
    // The drawing's plane has y down; its text is turned upright again.
    const place = `1 0 0 -1 ${number(shape.x)} ${number(shape.y)} Tm`;
    return `${paint(shape.fill, ['g', 'rg'])} BT /${FONT_NAMES[face]} ${number(shape.size)} Tf ${place} ${showOperator(shape.text, face)} ET`;
  }
  if (!shape.stroke && !shape.fill) return '';
  const parts = shape.segments.map(segmentOperators);
  const setup: string[] = [];
  if (shape.fill) setup.push(paint(shape.fill, ['g', 'rg']));
  if (shape.stroke)
    setup.push(
      paint(shape.stroke, ['G', 'RG']),
      `${number(shape.strokeWidth)} w [${shape.dash.map(number).join(' ')}] 0 d`,
    );
  const close = shape.fill && shape.stroke ? 'B' : shape.fill ? 'f' : 'S';
  return [...setup, ...parts, close].join(' ');
}

/** Draws a drawing with its top left corner at a point of the page, and returns its box. */
export function drawDrawing(
  canvas: Canvas,
  drawing: Drawing,
  xPt: number,
  yPt: number,
): [number, number, number, number] {
  const { scale, view } = drawing;
  const [widthPt, heightPt] = [view.width * scale, view.height * scale];
  canvas.enter(drawing.tag);
  canvas.write(`q ${number(xPt)} ${number(yPt - heightPt)} ${number(widthPt)} ${number(heightPt)} re W n`);
  canvas.write(
    `${ratio(scale)} 0 0 ${ratio(-scale)} ${number(xPt - view.x * scale)} ${number(yPt + view.y * scale)} cm`,
  );
  for (const shape of drawing.shapes) {
    const operators = shapeOperators(shape);
    if (operators !== '') canvas.write(operators);
  }
  canvas.write('Q');
  return [xPt, yPt - heightPt, xPt + widthPt, yPt];
}
