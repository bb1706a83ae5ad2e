import type { FoundWire } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { printGauge } from './print-gauge.ts';
import { wireEnd } from './wire-end.ts';

type Marked = Pick<FoundWire, 'mark' | 'gauge' | 'material'>;

/** Returns a sheet of the wire labels of the visit: each twice, for both ends of the wire; a capped wire has one end within reach. */
export function wireMarksView(context: PackContext): View {
  const { fmt } = context;
  const { wires = [], found = [] } = context.visit.wiring ?? {};
  const marks = [
    ...wires
      .filter(({ change }) => change === 'added')
      .map((wire) => markRow(wire, `${wireEnd(wire.from)} – ${wireEnd(wire.to)}`)),
    ...found
      .filter(({ decision }) => decision !== 'removed')
      .map((wire) => markRow(wire, `${wire.from} – ${wire.to}`, wire.decision === 'capped')),
  ].filter(({ first }) => first !== '');
  return {
    ...common(context),
    count: String(marks.length),
    marks,
    ...sources(fmt.text(m.wireMarks_printCutAlongLines)),
  };
}

function markRow({ mark = '', gauge, material }: Marked, ends: string, isCapped = false): Record<string, string> {
  return {
    first: mark,
    second: isCapped ? DASH : mark,
    gauge: gauge === undefined ? DASH : printGauge({ gauge, material }),
    ends,
  };
}
