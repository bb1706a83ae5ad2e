import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { INK, PALE, PAPER, SHADE } from './ink.ts';
import { label, line } from './plot.ts';
import { drawing, element } from './svg.ts';

/** One bar of the chart: a load in amperes with the capacity of the sources. */
export interface LoadBar {
  name: string;
  loadA: number;
  peakA: number;
  capacityA: number | undefined;
}

const WIDTH = 420;
const ROW = 22;
const LEFT = 84;
const RIGHT = 78;

/**
 * Draws continuous load (dark), peak (light) and capacity (line) of each phase, with the 80 % mark dashed. Phases
 * without a source, such as the start, do not set the scale: a bar beyond it is drawn with a break, and the figures next
 * to it state the load.
 */
export function loadChart(bars: readonly LoadBar[], fmt: Formatter): string {
  const supplied = bars.filter(({ capacityA }) => capacityA !== undefined);
  const scaleA = Math.max(1, ...supplied.flatMap(({ peakA, capacityA = 0 }) => [peakA, capacityA]));
  const rows = bars.map((bar, index) => row(bar, 8 + index * ROW, { scaleA, fmt }));
  const figures = bars.map(({ name, loadA, capacityA }) =>
    fmt.text(m.loadChart_aOf, {
      name,
      loadA: fmt.plain(loadA, 1),
      noSource: capacityA === undefined ? fmt.text(m.loadChart_noSource) : `${fmt.plain(capacityA, 1)} A`,
    }),
  );
  return drawing(
    WIDTH,
    16 + bars.length * ROW,
    125,
    fmt.text(m.loadChart_loadAgainstCapacity, { figures: figures.join('; ') }),
    rows.join(''),
  );
}

function row(
  { name, loadA, peakA, capacityA }: LoadBar,
  y: number,
  { scaleA, fmt }: { scaleA: number; fmt: Formatter },
): string {
  const across = (amps: number): number => Math.min(1, amps / scaleA) * (WIDTH - LEFT - RIGHT);
  const bar = (amps: number, fill: string): string =>
    element('rect', { x: LEFT, y: y + 3, width: Math.max(0.01, across(amps)), height: 12, fill });
  const mark = (amps: number, dash?: string): string =>
    line({ x: LEFT + across(amps), y }, { x: LEFT + across(amps), y: y + 18 }, INK, 1.2, dash);
  const limits = capacityA === undefined ? '' : mark(capacityA) + mark(capacityA * 0.8, '2 2');
  const head = label(name, { x: LEFT - 8, y: y + 13 }, 'end');
  const figure = label(
    `${fmt.plain(loadA, 1)} / ${fmt.plain(peakA, 1)} A`,
    { x: WIDTH - RIGHT + 8, y: y + 13 },
    'start',
  );
  const broken = peakA > scaleA ? breakAt(LEFT + across(peakA) - 12, y) : '';
  return head + bar(peakA, PALE) + bar(loadA, SHADE) + broken + limits + figure;
}

/** Draws a break through a bar: a slanted gap between two lines. */
function breakAt(x: number, y: number): string {
  const slanted = (by: number, stroke: string, width: number): string =>
    line({ x: x + by - 2, y: y + 17 }, { x: x + by + 2, y: y + 1 }, stroke, width);
  return slanted(0, PAPER, 4) + slanted(-2, INK, 0.8) + slanted(2, INK, 0.8);
}
