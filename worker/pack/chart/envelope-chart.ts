import type { LoadingSheet } from '../../calc/loading-sheet.ts';
import { cgMm, type MassMoment } from '../../calc/mass-moment.ts';
import { factorOf } from '../../units/quantity.ts';
import type { PackContext } from '../context.ts';
import { axisFor } from './axis.ts';
import { AREA, INK } from './ink.ts';
import { axisNames, grid, label, line, type Plot, plotOf } from './plot.ts';
import { drawing, element, type Point, points } from './svg.ts';

const [WIDTH, HEIGHT, WIDTH_MM] = [420, 280, 140];

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
  const plot = plotOver([...polygon, empty, ...paths.flat()]);
  const on = (place: { arm: number; mass: number }): Point => plot.at(place.arm, place.mass);
  const maximum = context.visit.aircraft.maximumMassKg / mass;
  const content = [
    grid(plot),
    element('polygon', { points: points(polygon.map(on)), fill: AREA, stroke: INK, 'stroke-width': 1.4 }),
    line(plot.at(plot.across.from, maximum), plot.at(plot.across.to, maximum), INK, 0.8, '5 3'),
    ...paths.map((path, index) => burnLine(path.map(on), String(index + 1))),
    emptyMark(on(empty)),
    axisNames(plot, `centre of gravity, ${context.say.unit('arm')} aft of datum`, `mass, ${context.say.unit('mass')}`),
  ].join('');
  return drawing(WIDTH, HEIGHT, WIDTH_MM, describe(context, sheet), content);
}

function plotOver(places: readonly { arm: number; mass: number }[]): Plot {
  const arms = axisFor(widened(places.map((place) => place.arm)), 7);
  const masses = axisFor(widened(places.map((place) => place.mass)), 8);
  return plotOf(WIDTH, HEIGHT, arms, masses);
}

/** Values with a little room on either side, so that no line of the envelope lies on the frame. */
function widened(values: readonly number[]): number[] {
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  const room = (greatest - least) * 0.04;
  return [least - room, greatest + room];
}

/** A numbered way from take-off (dot) to the end of the fuel. */
function burnLine(path: readonly Point[], name: string): string {
  const start = path[0];
  if (!start) return '';
  const way = element('polyline', { points: points(path), fill: 'none', stroke: INK, 'stroke-width': 1.2 });
  const dot = element('circle', { cx: start.x, cy: start.y, r: 2.8, fill: INK });
  return way + dot + label(name, { x: start.x + 5, y: start.y - 4 }, 'start', true);
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
  return square + label('empty', { x: x + 7, y: y + 3.5 }, 'start');
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
