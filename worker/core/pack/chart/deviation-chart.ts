import { deviationAt } from '../../calc/compass/coefficients.ts';
import type { SwingResult } from '../../calc/compass/swing.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { axisFor } from './axis.ts';
import { INK, PAPER } from './ink.ts';
import { axisNames, grid, line, type Plot, plotOf } from './plot.ts';
import { drawing, element, type Point, points } from './svg.ts';

const [WIDTH, HEIGHT, WIDTH_MM] = [420, 200, 125];
const HEADINGS = { from: 0, to: 360, ticks: [0, 45, 90, 135, 180, 225, 270, 315, 360], decimals: 0 };
const CURVE_STEP_DEG = 5;

/** Returns a heading in three figures, as pilots write it. */
const threeFigures = (deg: number): string => String(deg).padStart(3, '0');

/** Draws deviation over heading: readings (dots) and the fit of the coefficients (curves), a pair for each electrical state. */
export function deviationChart(swings: readonly SwingResult[], fmt: Formatter): string {
  const read = swings.flatMap(({ readings }) => readings.map(({ deviationDeg }) => deviationDeg));
  const curves = swings.map(curveOf);
  const deviations = axisFor([-1, 1, ...read, ...curves.flat().map(({ y }) => y)], 6);
  const plot = plotOf(WIDTH, HEIGHT, HEADINGS, deviations);
  const content = [
    grid(plot, fmt, threeFigures),
    line(plot.at(0, 0), plot.at(360, 0), INK, 0.8),
    ...swings.map((swing, index) => swingMarks(plot, swing, curves[index] ?? [])),
    axisNames(plot, fmt.text(m.deviationChart_magneticHeading), fmt.text(m.deviationChart_deviationEastPositive)),
  ];
  return drawing(WIDTH, HEIGHT, WIDTH_MM, describe(swings, fmt), content.join(''));
}

/** Returns the fitted curve, heading and deviation as x and y; empty if there are too few headings. */
function curveOf({ coefficients }: SwingResult): Point[] {
  if (!coefficients) return [];
  return Array.from({ length: 360 / CURVE_STEP_DEG + 1 }, (_, step) => {
    const x = step * CURVE_STEP_DEG;
    return { x, y: deviationAt(coefficients, x) };
  });
}

/** Draws a swing. On: filled dots and a solid line. Off: open dots and dashes. */
function swingMarks(plot: Plot, { state, readings }: SwingResult, curve: readonly Point[]): string {
  const isOn = state === 'equipment-on';
  const way = points(curve.map(({ x, y }) => plot.at(x, y)));
  const stroke = { stroke: INK, 'stroke-width': 1.1, 'stroke-dasharray': isOn ? undefined : '4 2.5' };
  const dots = readings.map(({ headingDeg, deviationDeg }) => {
    const { x, y } = plot.at(headingDeg, deviationDeg);
    return element('circle', { cx: x, cy: y, r: 2.6, fill: isOn ? INK : PAPER, stroke: INK, 'stroke-width': 1 });
  });
  return (curve.length > 0 ? element('polyline', { points: way, fill: 'none', ...stroke }) : '') + dots.join('');
}

function describe(swings: readonly SwingResult[], fmt: Formatter): string {
  const said = swings.map(({ state, readings }) => {
    const list = readings.map(
      ({ headingDeg, deviationDeg }) => `${threeFigures(Math.round(headingDeg))} ${fmt.signed(deviationDeg, 1)}`,
    );
    return `${state === 'equipment-on' ? fmt.text(m.equipment) : fmt.text(m.equipmentOff)}: ${list.join(', ')}`;
  });
  return fmt.text(m.deviationChart_deviationDegreesOverMagnetic, { said: said.join('. ') });
}
