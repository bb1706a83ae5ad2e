import { drawing, element, text } from './svg.ts';

/** One bar of the chart: a load in amperes against what the sources give. */
export interface LoadBar {
  name: string;
  loadA: number;
  peakA: number;
  capacityA: number | undefined;
}

const WIDTH = 500;
const ROW = 24;
const LEFT = 92;
const RIGHT = 84;
const INK = '#1a1a1a';

/**
 * Continuous load (dark), peak (light) and capacity (line) of each phase, with the 80 % mark dashed. Phases without a source, such as
 * the start, do not set the scale: their bars end at its edge, and the figures beside them say how much it is.
 */
export function loadChart(bars: readonly LoadBar[]): string {
  const supplied = bars.filter(({ capacityA }) => capacityA !== undefined);
  const greatest = Math.max(1, ...supplied.flatMap(({ peakA, capacityA = 0 }) => [peakA, capacityA]));
  const across = (amps: number): number => Math.min(1, amps / greatest) * (WIDTH - LEFT - RIGHT);
  const rows = bars.map((bar, index) => row(bar, 8 + index * ROW, across));
  const label = bars.map(
    ({ name, loadA, capacityA }) =>
      `${name}: ${loadA.toFixed(1)} A of ${capacityA === undefined ? 'no source' : `${capacityA.toFixed(1)} A`}`,
  );
  return drawing(WIDTH, 16 + bars.length * ROW, 150, `Load against capacity. ${label.join('; ')}.`, rows.join(''));
}

function row({ name, loadA, peakA, capacityA }: LoadBar, y: number, across: (amps: number) => number): string {
  const bar = (amps: number, fill: string): string =>
    element('rect', { x: LEFT, y: y + 3, width: Math.max(0.01, across(amps)), height: 12, fill });
  const mark = (amps: number, dash?: string): string =>
    element('line', {
      x1: LEFT + across(amps),
      y1: y,
      x2: LEFT + across(amps),
      y2: y + 18,
      stroke: INK,
      'stroke-width': 1.2,
      'stroke-dasharray': dash,
    });
  const limits = capacityA === undefined ? '' : mark(capacityA) + mark(capacityA * 0.8, '2 2');
  const head = text(name, { x: LEFT - 8, y: y + 13, 'font-size': 10, 'text-anchor': 'end', fill: INK });
  const figure = text(`${loadA.toFixed(1)} / ${peakA.toFixed(1)} A`, {
    x: WIDTH - RIGHT + 8,
    y: y + 13,
    'font-size': 10,
    fill: INK,
  });
  return head + bar(peakA, '#d0d0d0') + bar(loadA, '#707070') + limits + figure;
}
