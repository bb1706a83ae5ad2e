import type { LoadingSheet } from '../../calc/loading-sheet.ts';
import { cgMm, type MassMoment } from '../../calc/mass-moment.ts';
import { factorOf } from '../../units/quantity.ts';
import { printNumber } from '../../units/rounding.ts';
import type { PackContext } from '../context.ts';
import { type Axis, axisFor } from './axis.ts';
import { drawing, element, type Point, points, text } from './svg.ts';

const WIDTH = 500;
const HEIGHT = 320;
const FRAME = { left: 52, right: 10, top: 12, bottom: 42 };
const INK = '#1a1a1a';
const GRID = '#d9d9d9';
const FILL = '#efefef';

interface Scales {
  arms: Axis;
  masses: Axis;
  /** A centre of gravity and a mass, in units of the record, on the sheet. */
  at(arm: number, mass: number): Point;
}

/** Envelope with the empty aircraft, both extremes and every fuel-burn path; empty where no envelope is specified. */
export function envelopeChart(context: PackContext, sheet: LoadingSheet): string {
  const corners = context.visit.aircraft.envelope;
  const { schedule } = context.results;
  if (!corners || !schedule) return '';
  const [arm, mass] = [factorOf('arm', context.say.units), factorOf('mass', context.say.units)];
  const placed = (state: MassMoment): { arm: number; mass: number } => ({
    arm: cgMm(state) / arm,
    mass: state.massKg / mass,
  });
  const polygon = corners.map(({ armMm, massKg }) => ({ arm: armMm / arm, mass: massKg / mass }));
  const empty = placed(schedule);
  const paths = sheet.loadings.map(({ path }) => path.map(placed));
  const scales = scalesFor([...polygon, empty, ...paths.flat()]);
  const on = (place: { arm: number; mass: number }): Point => scales.at(place.arm, place.mass);
  const content = [
    grid(scales),
    element('polygon', { points: points(polygon.map(on)), fill: FILL, stroke: INK, 'stroke-width': 1.4 }),
    maximumLine(scales, context.visit.aircraft.maximumMassKg / mass),
    ...paths.map((path, index) => burnLine(path.map(on), String(index + 1))),
    emptyMark(on(empty)),
    labels(scales, context),
  ].join('');
  return drawing(WIDTH, HEIGHT, 150, describe(context, sheet), content);
}

function scalesFor(places: readonly { arm: number; mass: number }[]): Scales {
  const arms = axisFor(widened(places.map((place) => place.arm)), 8);
  const masses = axisFor(widened(places.map((place) => place.mass)), 8);
  const across = (WIDTH - FRAME.left - FRAME.right) / (arms.to - arms.from);
  const up = (HEIGHT - FRAME.top - FRAME.bottom) / (masses.to - masses.from);
  return {
    arms,
    masses,
    at: (arm, mass) => ({
      x: FRAME.left + (arm - arms.from) * across,
      y: HEIGHT - FRAME.bottom - (mass - masses.from) * up,
    }),
  };
}

/** Values with a little room on either side, so that no line of the envelope lies on the frame. */
function widened(values: readonly number[]): number[] {
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  const room = (greatest - least) * 0.04;
  return [least - room, greatest + room];
}

function grid({ arms, masses, at }: Scales): string {
  const line = (from: Point, to: Point): string =>
    element('line', { x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke: GRID, 'stroke-width': 0.6 });
  const columns = arms.ticks.map((arm) => {
    const foot = at(arm, masses.from);
    const tick = text(printNumber(arm, arms.decimals), {
      x: foot.x,
      y: foot.y + 14,
      'font-size': 10,
      'text-anchor': 'middle',
      fill: INK,
    });
    return line(foot, at(arm, masses.to)) + tick;
  });
  const rows = masses.ticks.map((mass) => {
    const side = at(arms.from, mass);
    const tick = text(printNumber(mass, masses.decimals), {
      x: side.x - 6,
      y: side.y + 3.5,
      'font-size': 10,
      'text-anchor': 'end',
      fill: INK,
    });
    return line(side, at(arms.to, mass)) + tick;
  });
  return [...columns, ...rows].join('');
}

function maximumLine({ arms, at }: Scales, maximum: number): string {
  const [from, to] = [at(arms.from, maximum), at(arms.to, maximum)];
  return element('line', {
    x1: from.x,
    y1: from.y,
    x2: to.x,
    y2: to.y,
    stroke: INK,
    'stroke-width': 0.8,
    'stroke-dasharray': '5 3',
  });
}

/** A numbered way from take-off (dot) to the end of the fuel. */
function burnLine(path: readonly Point[], name: string): string {
  const start = path[0];
  if (!start) return '';
  const way = element('polyline', { points: points(path), fill: 'none', stroke: INK, 'stroke-width': 1.2 });
  const dot = element('circle', { cx: start.x, cy: start.y, r: 2.8, fill: INK });
  return way + dot + text(name, { x: start.x + 5, y: start.y - 4, 'font-size': 10, 'font-weight': 'bold', fill: INK });
}

function emptyMark({ x, y }: Point): string {
  const square = element('rect', {
    x: x - 3,
    y: y - 3,
    width: 6,
    height: 6,
    fill: '#ffffff',
    stroke: INK,
    'stroke-width': 1.2,
  });
  return square + text('empty', { x: x + 7, y: y + 3.5, 'font-size': 10, fill: INK });
}

function labels({ arms, masses, at }: Scales, { say }: PackContext): string {
  const foot = at((arms.from + arms.to) / 2, masses.from);
  const head = at(arms.from, masses.to);
  return (
    text(`centre of gravity, ${say.unit('arm')} aft of datum`, {
      x: foot.x,
      y: foot.y + 32,
      'font-size': 10.5,
      'text-anchor': 'middle',
      fill: INK,
    }) + text(`mass, ${say.unit('mass')}`, { x: head.x + 5, y: head.y + 11, 'font-size': 10.5, fill: INK })
  );
}

function describe({ say, results, visit }: PackContext, sheet: LoadingSheet): string {
  const { schedule } = results;
  const where = (state: MassMoment): string =>
    `${say.measure('mass', state.massKg)} at ${say.measure('arm', cgMm(state))}`;
  const paths = sheet.loadings.map(
    ({ name, path }) =>
      `${name}: from ${path[0] ? where(path[0]) : '–'} to ${path.at(-1) ? where(path.at(-1) as MassMoment) : '–'}`,
  );
  return `Mass against centre of gravity, maximum ${say.measure('mass', visit.aircraft.maximumMassKg)}. Empty: ${schedule ? where(schedule) : '–'}. ${paths.join('. ')}.`;
}
