import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { axisFor } from './axis.ts';
import { AREA, INK, PAPER } from './ink.ts';
import { axisNames, grid, label, line, type Plot, plotOf } from './plot.ts';
import { drawing, element, type Point, points } from './svg.ts';

const [WIDTH, HEIGHT, WIDTH_MM] = [420, 280, 140];

/** A place in the units of the axes. */
export interface Place {
  across: number;
  up: number;
}

/** A permitted area with loadings, in the units of the record. */
export interface AreaPicture {
  corners: readonly Place[];
  empty: Place;
  /** Paths from take-off to the end of the fuel; each has its name next to its start. */
  ways: readonly { name: string; places: readonly Place[] }[];
  /** Level of a dashed line, if one bounds the area. */
  maximumUp?: number;
  names: { across: string; up: string };
  fmt: Formatter;
  /** Alternative text of the picture. */
  label: string;
}

/** Draws a permitted area, the empty aircraft and every path. */
export function areaDrawing({ corners, empty, ways, maximumUp, names, fmt, label: text }: AreaPicture): string {
  const plot = plotOver([...corners, empty, ...ways.flatMap(({ places }) => places)]);
  const on = ({ across, up }: Place): Point => plot.at(across, up);
  const content = [
    grid(plot, fmt),
    element('polygon', { points: points(corners.map(on)), fill: AREA, stroke: INK, 'stroke-width': 1.4 }),
    maximumUp === undefined
      ? ''
      : line(plot.at(plot.across.from, maximumUp), plot.at(plot.across.to, maximumUp), INK, 0.8, '5 3'),
    ...ways.map(({ name, places }) => burnLine(places.map(on), name, plot)),
    emptyMark(on(empty), plot, fmt),
    axisNames(plot, names.across, names.up),
  ].join('');
  return drawing(WIDTH, HEIGHT, WIDTH_MM, text, content);
}

function plotOver(places: readonly Place[]): Plot {
  const across = axisFor(widened(places.map((place) => place.across)), 7);
  const up = axisFor(widened(places.map((place) => place.up)), 8);
  return plotOf(WIDTH, HEIGHT, across, up);
}

/** Adds a margin to the range of values, so that no line of the area lies on the frame. */
function widened(values: readonly number[]): number[] {
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  const room = (greatest - least) * 0.04;
  return [least - room, greatest + room];
}

/** Draws a numbered path from take-off (dot) to the end of the fuel. */
function burnLine(path: readonly Point[], name: string, { width }: Plot): string {
  const start = path[0];
  if (!start) return '';
  const way = element('polyline', { points: points(path), fill: 'none', stroke: INK, 'stroke-width': 1.2 });
  const dot = element('circle', { cx: start.x, cy: start.y, r: 2.8, fill: INK });
  const isRear = start.x > width / 2;
  return (
    way + dot + label(name, { x: isRear ? start.x - 5 : start.x + 5, y: start.y - 4 }, isRear ? 'end' : 'start', true)
  );
}

/** Draws the empty aircraft, with its name on the side with more room: it may be the most aft point of the drawing. */
function emptyMark({ x, y }: Point, plot: Plot, fmt: Formatter): string {
  const square = element('rect', {
    x: x - 3,
    y: y - 3,
    width: 6,
    height: 6,
    fill: PAPER,
    stroke: INK,
    'stroke-width': 1.2,
  });
  const isRear = x > plot.width / 2;
  return (
    square +
    label(fmt.text(m.envelopeDrawing_empty), { x: isRear ? x - 7 : x + 7, y: y + 3.5 }, isRear ? 'end' : 'start')
  );
}
