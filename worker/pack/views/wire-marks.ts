import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { printGauge } from './print-gauge.ts';
import { wireEnd } from './wire-end.ts';

/** A sheet of the marks of the visit: each twice, for both ends of the wire. */
export function wireMarksView(context: PackContext): View {
  const { wires = [], found = [] } = context.visit.wiring ?? {};
  const marks = [
    ...wires
      .filter(({ change }) => change === 'added')
      .map(({ mark, gauge, material, from, to }) => ({
        mark,
        gauge: printGauge({ gauge, material }),
        ends: `${wireEnd(from)} – ${wireEnd(to)}`,
      })),
    ...found
      .filter(({ decision }) => decision !== 'removed')
      .map(({ mark, gauge, material, from, to }) => ({
        mark,
        gauge: gauge ? printGauge({ gauge, material }) : '',
        ends: `${from} – ${to}`,
      })),
  ].filter(({ mark }) => mark !== undefined);
  return {
    ...common(context),
    count: String(marks.length),
    marks: marks.map(({ mark, gauge, ends }) => ({ first: mark ?? '', second: mark ?? '', gauge, ends })),
    ...sources('Print, cut along the lines and sleeve one mark on each end, readable from the nearer connector.'),
  };
}
