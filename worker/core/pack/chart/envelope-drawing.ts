import type { EnvelopeCorner } from '../../calc/loading/envelope.ts';
import { cgMm, type MassMoment } from '../../calc/mass/mass-moment.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { factorOf } from '../../units/quantity.ts';
import { axisFor } from './axis.ts';
import { AREA, INK } from './ink.ts';
import { axisNames, grid, label, line, type Plot, plotOf } from './plot.ts';
import { drawing, element, type Point, points } from './svg.ts';

const [WIDTH, HEIGHT, WIDTH_MM] = [420, 280, 140];

/** An envelope with loadings, in calculation units; drawn in the units and the language of the record. */
export interface EnvelopePicture {
  corners: readonly EnvelopeCorner[];
  maximumMassKg: number;
  empty: MassMoment;
  /** Paths from take-off to the end of the fuel; each has its name next to its start. */
  ways: readonly { name: string; path: readonly MassMoment[] }[];
  fmt: Formatter;
  /** Alternative text of the picture. */
  label: string;
}

interface Place {
  arm: number;
  mass: number;
}

/** Draws mass over centre of gravity: the envelope, the empty aircraft and every path. */
export function envelopeDrawing({ corners, maximumMassKg, empty, ways, fmt, label: text }: EnvelopePicture): string {
  const [arm, mass] = [factorOf('arm', fmt.units), factorOf('mass', fmt.units)];
  const placed = (state: MassMoment): Place => ({ arm: cgMm(state) / arm, mass: state.massKg / mass });
  const polygon = corners.map(({ armMm, massKg }) => ({ arm: armMm / arm, mass: massKg / mass }));
  const paths = ways.map(({ name, path }) => ({ name, places: path.map(placed) }));
  const plot = plotOver([...polygon, placed(empty), ...paths.flatMap(({ places }) => places)]);
  const on = (place: Place): Point => plot.at(place.arm, place.mass);
  const maximum = maximumMassKg / mass;
  const content = [
    grid(plot, fmt),
    element('polygon', { points: points(polygon.map(on)), fill: AREA, stroke: INK, 'stroke-width': 1.4 }),
    line(plot.at(plot.across.from, maximum), plot.at(plot.across.to, maximum), INK, 0.8, '5 3'),
    ...paths.map(({ name, places }) => burnLine(places.map(on), name, plot)),
    emptyMark(on(placed(empty)), plot, fmt),
    axisNames(
      plot,
      fmt.text(m.envelopeDrawing_centreGravityAftDatum, { arm: fmt.unit('arm') }),
      fmt.text(m.envelopeDrawing_mass, { mass: fmt.unit('mass') }),
    ),
  ].join('');
  return drawing(WIDTH, HEIGHT, WIDTH_MM, text, content);
}

function plotOver(places: readonly Place[]): Plot {
  const arms = axisFor(widened(places.map((place) => place.arm)), 7);
  const masses = axisFor(widened(places.map((place) => place.mass)), 8);
  return plotOf(WIDTH, HEIGHT, arms, masses);
}

/** Adds a margin to the range of values, so that no line of the envelope lies on the frame. */
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
    fill: '#ffffff',
    stroke: INK,
    'stroke-width': 1.2,
  });
  const isRear = x > plot.width / 2;
  return (
    square +
    label(fmt.text(m.envelopeDrawing_empty), { x: isRear ? x - 7 : x + 7, y: y + 3.5 }, isRear ? 'end' : 'start')
  );
}
