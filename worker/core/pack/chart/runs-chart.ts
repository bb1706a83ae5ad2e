import type { RunComparison } from '../../calc/engine/engine-runs.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { INK, PALE, PAPER } from './ink.ts';
import { label, line } from './plot.ts';
import { shortened } from './shortened.ts';
import { drawing, element } from './svg.ts';

const [WIDTH, WIDTH_MM, ROW] = [420, 125, 17];
const TRACK = { from: 170, to: 400 };
/** Positions of the limits on the track, as shares, so that a value outside them still has room. */
const LIMITS = { least: 0.15, most: 0.85 };
const NAME_EM = 15.5;

/** Draws every instrument between its limits, before the work (open) and after it (filled); each row has its own scale. */
export function runsChart(comparisons: readonly RunComparison[], fmt: Formatter): string {
  const rows = comparisons.map((comparison, index) => row(comparison, 6 + index * ROW));
  const shown = (value: number | undefined): string =>
    value === undefined ? fmt.text(m.runsChart_notRead) : fmt.asIs(value);
  const said = comparisons.map(({ name, unit, before, after }) =>
    fmt.text(m.runsChart_beforeAfter, { name, shown: shown(before), shown2: shown(after), unit }),
  );
  const label = fmt.text(m.runsChart_instrumentsBetweenTheirLimits, { said: said.join('; ') });
  return drawing(WIDTH, 10 + comparisons.length * ROW, WIDTH_MM, label, rows.join(''));
}

function row(comparison: RunComparison, top: number): string {
  const { name, before, after, least, most } = comparison;
  const y = top + ROW / 2;
  const place = scaleOf(comparison);
  const limit = (value: number | undefined): string => {
    if (value === undefined) return '';
    const x = place(value);
    return line({ x, y: y - 6 }, { x, y: y + 6 }, INK, 1.2);
  };
  const dot = (value: number | undefined, fill: string): string =>
    value === undefined
      ? ''
      : element('circle', { cx: place(value), cy: y, r: 3, fill, stroke: INK, 'stroke-width': 1 });
  return [
    label(shortened(name, NAME_EM), { x: TRACK.from - 10, y: y + 3.5 }, 'end'),
    line({ x: TRACK.from, y }, { x: TRACK.to, y }, PALE, 3),
    limit(least),
    limit(most),
    before !== undefined && after !== undefined ? line({ x: place(before), y }, { x: place(after), y }, INK, 1) : '',
    dot(before, PAPER),
    dot(after, INK),
  ].join('');
}

/** Returns the position of a value on the track; a value far outside is at its end. */
function scaleOf({ before, after, least, most }: RunComparison): (value: number) => number {
  const values = [before, after, least, most].filter((value) => value !== undefined);
  const low = least ?? Math.min(0, ...values);
  const high = most ?? Math.max(...values);
  const span = high > low ? high - low : Math.max(Math.abs(high), 1);
  return (value) => {
    const share = LIMITS.least + ((value - low) / span) * (LIMITS.most - LIMITS.least);
    return TRACK.from + Math.min(1, Math.max(0, share)) * (TRACK.to - TRACK.from);
  };
}
