import { textWidthPt } from '../fonts/face.ts';
import { childElements, type Markup, textOf } from '../parse/markup.ts';
import { printableText } from '../text/printable-text.ts';
import { pathSegments, shapeSegments } from './drawing-path.ts';
import type { Colour, Shape } from './drawing-shape.ts';
import type { View } from './item.ts';
import type { LayoutContext } from './layout-context.ts';

type Attributes = Readonly<Record<string, string>>;

const NAMED: Readonly<Record<string, Colour | null>> = {
  none: null,
  black: [0, 0, 0],
  currentColor: [0, 0, 0],
  white: [1, 1, 1],
};

// Attributes of a shape from its groups or, failing that, from SVG 1.1: black fill, no stroke, width 1.
const INHERITED: Attributes = {
  fill: 'black',
  stroke: 'none',
  'stroke-width': '1',
  'font-size': '10',
  'text-anchor': 'start',
};

function colour(value: string): Colour | null {
  const named = NAMED[value];
  if (named !== undefined) return named;
  const digits = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(value)?.[1];
  if (!digits)
    throw new Error(`Cannot typeset drawing: colour must be none, a name we know or #rgb: current value is ${value}`);
  const size = digits.length / 3;
  const channel = (at: number): number => {
    const part = digits.slice(at * size, (at + 1) * size);
    return Number.parseInt(size === 1 ? part + part : part, 16) / 255;
  };
  return [channel(0), channel(1), channel(2)];
}

/** Places a label: one that would leave the drawing is moved in from its edge; one wider than the drawing is reported. */
function lettering(element: Markup, own: Attributes, view: View, setting: LayoutContext): Shape {
  const text = printableText(textOf(element), setting.documentId, setting.report);
  const size = Number(own['font-size']);
  const semibold = own['font-weight'] === 'bold' || Number(own['font-weight']) >= 600;
  const width = textWidthPt(text, semibold ? 'semibold' : 'regular', size);
  const share = { start: 0, middle: 0.5, end: 1 }[own['text-anchor'] ?? 'start'] ?? 0;
  const asked = Number(own.x ?? 0) - width * share;
  if (width > view.width) {
    setting.report({ code: 'CONTENT_DOES_NOT_FIT', documentId: setting.documentId, context: text.slice(0, 60) });
  }
  const x = Math.max(view.x, Math.min(asked, view.x + view.width - width));
  return {
    kind: 'text',
    x,
    y: Number(own.y ?? 0),
    text,
    size,
    semibold,
    fill: colour(own.fill ?? 'black') ?? [0, 0, 0],
  };
}

function outlined(element: Markup, own: Attributes): Shape {
  return {
    kind: 'path',
    segments: element.name === 'path' ? pathSegments(own.d ?? '') : shapeSegments(element.name, own),
    stroke: colour(own.stroke ?? 'none'),
    fill: element.name === 'line' ? null : colour(own.fill ?? 'black'),
    strokeWidth: Number(own['stroke-width']),
    dash: (own['stroke-dasharray'] ?? '')
      .split(/[\s,]+/)
      .flatMap((part) => (part === '' || part === 'none' ? [] : [Number(part)])),
  };
}

/** Returns the `viewBox` of a drawing. Throws if it is not four numbers with a size. */
export function viewOf(svg: Markup): View {
  const [x, y, width, height] = (svg.attributes.viewBox ?? '').split(/[\s,]+/).map(Number);
  if (x === undefined || y === undefined || !((width ?? 0) > 0) || !((height ?? 0) > 0)) {
    throw new Error(`Cannot typeset <svg>: viewBox must be four numbers: current value is ${svg.attributes.viewBox}`);
  }
  return { x, y, width: width ?? 0, height: height ?? 0 };
}

/** Returns the shapes of a drawing in painting order. */
export function drawingShapes(svg: Markup, view: View, setting: LayoutContext): Shape[] {
  const shapes: Shape[] = [];
  const visit = (element: Markup, around: Attributes): void => {
    const { id: _, ...given } = element.attributes;
    const own = { ...around, ...given };
    if (element.name === 'g') for (const child of childElements(element)) visit(child, own);
    else {
      const shape = element.name === 'text' ? lettering(element, own, view, setting) : outlined(element, own);
      shapes.push(shape);
    }
  };
  for (const child of childElements(svg)) visit(child, INHERITED);
  return shapes;
}
