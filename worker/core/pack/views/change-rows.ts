import type { ChangeLine } from '../../calc/mass/equipment-change.ts';
import { total } from '../../calc/mass/mass-moment.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';

const KINDS: Record<ChangeLine['kind'], Message> = {
  removed: m.changeRows_out,
  installed: m.changeRows_in,
  relocated: m.changeRows_moved,
  updated: m.changeRows_updated,
  correction: m.changeRows_record,
};

/** Returns the printed signed lines of an equipment change with their total. */
export function changeRows(
  { fmt }: PackContext,
  lines: readonly ChangeLine[],
): { rows: Record<string, string>[]; totalMass: string; totalMoment: string } {
  const sum = total(lines);
  return {
    rows: lines.map(({ kind, item, name, massKg, armMm, momentKgMm, modification, update }) => ({
      kind: fmt.text(KINDS[kind]),
      item,
      name: named(fmt, name, update),
      modification: modification ?? fmt.text(m.changeRows_found),
      mass: fmt.number('mass', massKg, { signed: true, extra: 1 }),
      arm: fmt.number('arm', armMm),
      moment: fmt.number('moment', momentKgMm, { signed: true }),
    })),
    totalMass: fmt.number('mass', sum.massKg, { signed: true, extra: 1 }),
    totalMoment: fmt.number('moment', sum.momentKgMm, { signed: true }),
  };
}

/** Returns the name of the item; of one updated in place also what is new in it. */
function named(fmt: PackContext['fmt'], name: string | undefined, update: ChangeLine['update']): string {
  if (name === undefined) return fmt.text(m.changeRows_notList);
  return update
    ? fmt.text(m.changeRows_fromTo, { name, what: fmt.term(update.what), from: update.from, to: update.to })
    : name;
}

/** Returns column heads of mass, arm and moment, with the units of the record. */
export function unitHeads({ fmt }: PackContext): {
  massUnit: string;
  armUnit: string;
  momentUnit: string;
  volumeUnit: string;
} {
  return {
    massUnit: fmt.unit('mass'),
    armUnit: fmt.unit('arm'),
    momentUnit: fmt.unit('moment'),
    volumeUnit: fmt.unit('volume'),
  };
}
