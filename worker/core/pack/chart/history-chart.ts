import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { type Axis, axisFor } from './axis.ts';
import { INK } from './ink.ts';
import { axisNames, grid, plotOf } from './plot.ts';
import { drawing, element, type Point, points } from './svg.ts';

const [WIDTH, HEIGHT, WIDTH_MM] = [240, 126, 80];
const MAX_FIGURES = 6;

/** Draws a value of the empty aircraft after each step of its history, as a step line: it is valid until the next step. */
export function historyChart(name: string, unit: string, values: readonly number[], fmt: Formatter): string {
  const steps: Axis = { from: 0.5, to: values.length + 0.5, ticks: stepTicks(values.length), decimals: 0 };
  const plot = plotOf(WIDTH, HEIGHT, steps, axisFor(values, 4));
  const stair = values.flatMap((value, index): Point[] => [
    plot.at(index + 1, value),
    plot.at(Math.min(index + 2, steps.to), value),
  ]);
  const dots = values.map((value, index) => {
    const { x, y } = plot.at(index + 1, value);
    return element('circle', { cx: x, cy: y, r: 2.4, fill: INK });
  });
  const content = [
    grid(plot, fmt),
    element('polyline', { points: points(stair), fill: 'none', stroke: INK, 'stroke-width': 1.2 }),
    ...dots,
    axisNames(plot, fmt.text(m.historyChart_stepHistory), `${name}, ${unit}`),
  ];
  const label = fmt.text(m.historyChart_afterEachStep, {
    name,
    unit,
    values: values.map((value) => fmt.plain(value, 1)).join(', '),
  });
  return drawing(WIDTH, HEIGHT, WIDTH_MM, label, content.join(''));
}

/** Returns the step numbers to print: all of them, or as many as fit. */
function stepTicks(count: number): number[] {
  const every = Math.ceil(count / MAX_FIGURES);
  return Array.from({ length: Math.ceil(count / every) }, (_, index) => 1 + index * every);
}
