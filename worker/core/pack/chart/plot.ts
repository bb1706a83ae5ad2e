import type { Formatter } from '../../text/formatter.ts';
import type { Axis } from './axis.ts';
import { GRID, INK } from './ink.ts';
import { element, type Point, text } from './svg.ts';

/** Frame for points: two axes, and the mapping from values to the sheet. */
export interface Plot {
  width: number;
  height: number;
  across: Axis;
  up: Axis;
  at(across: number, up: number): Point;
}

const FRAME = { left: 50, right: 12, top: 22, bottom: 40 };
const SIZE = 10;

/** Returns a plot of a size, in units of the drawing. */
export function plotOf(width: number, height: number, across: Axis, up: Axis): Plot {
  const acrossScale = (width - FRAME.left - FRAME.right) / (across.to - across.from);
  const upScale = (height - FRAME.top - FRAME.bottom) / (up.to - up.from);
  return {
    width,
    height,
    across,
    up,
    at: (x, y) => ({
      x: FRAME.left + (x - across.from) * acrossScale,
      y: height - FRAME.bottom - (y - up.from) * upScale,
    }),
  };
}

/** Draws grid lines with their figures; `print` formats a figure of the axis across. */
export function grid(plot: Plot, fmt: Formatter, print = figureOf(plot.across, fmt)): string {
  const { across, up, at } = plot;
  const printUp = figureOf(up, fmt);
  const columns = across.ticks.map((value) => {
    const foot = at(value, up.from);
    return line(foot, at(value, up.to), GRID) + label(print(value), { x: foot.x, y: foot.y + SIZE + 4 }, 'middle');
  });
  const rows = up.ticks.map((value) => {
    const side = at(across.from, value);
    return line(side, at(across.to, value), GRID) + label(printUp(value), { x: side.x - 5, y: side.y + 3.5 }, 'end');
  });
  return [...columns, ...rows].join('');
}

/** Draws the names of the axes: across below the figures, up above the frame. */
export function axisNames({ across, up, at }: Plot, acrossName: string, upName: string): string {
  const foot = at((across.from + across.to) / 2, up.from);
  const head = at(across.from, up.to);
  return (
    label(acrossName, { x: foot.x, y: foot.y + 2 * SIZE + 10 }, 'middle') +
    label(upName, { x: head.x - FRAME.left + 4, y: head.y - SIZE }, 'start')
  );
}

/** Draws a straight line; `dashes` as in SVG. */
export function line(from: Point, to: Point, stroke: string, width = 0.6, dashes?: string): string {
  return element('line', {
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
    stroke,
    'stroke-width': width,
    'stroke-dasharray': dashes,
  });
}

/** Draws a word or figure next to a point. */
export function label(content: string, { x, y }: Point, anchor: 'start' | 'middle' | 'end', isBold = false): string {
  return text(content, {
    x,
    y,
    'font-size': SIZE,
    'font-weight': isBold ? 'bold' : undefined,
    'text-anchor': anchor,
    fill: INK,
  });
}

function figureOf(axis: Axis, fmt: Formatter): (value: number) => string {
  return (value) => fmt.plain(value, axis.decimals);
}
