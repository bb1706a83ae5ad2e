import type { ChangeLine } from '../../calc/equipment-change.ts';
import { total } from '../../calc/mass-moment.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';

const KINDS: Record<ChangeLine['kind'], Message> = {
  removed: m.changeRows_out,
  installed: m.changeRows_in,
  relocated: m.changeRows_moved,
  correction: m.changeRows_record,
};

/** Signed lines of an equipment change with their total, as printed. */
export function changeRows(
  { say }: PackContext,
  lines: readonly ChangeLine[],
): { rows: Record<string, string>[]; totalMass: string; totalMoment: string } {
  const sum = total(lines);
  return {
    rows: lines.map(({ kind, item, name, massKg, armMm, momentKgMm, modification }) => ({
      kind: say.text(KINDS[kind]),
      item,
      name: name ?? say.text(m.changeRows_notList),
      modification: modification ?? say.text(m.changeRows_found),
      mass: say.number('mass', massKg, { signed: true, extra: 1 }),
      arm: say.number('arm', armMm),
      moment: say.number('moment', momentKgMm, { signed: true }),
    })),
    totalMass: say.number('mass', sum.massKg, { signed: true, extra: 1 }),
    totalMoment: say.number('moment', sum.momentKgMm, { signed: true }),
  };
}

/** Heads of columns of mass, arm and moment, with the units of the record. */
export function unitHeads({ say }: PackContext): {
  massUnit: string;
  armUnit: string;
  momentUnit: string;
  volumeUnit: string;
} {
  return {
    massUnit: say.unit('mass'),
    armUnit: say.unit('arm'),
    momentUnit: say.unit('moment'),
    volumeUnit: say.unit('volume'),
  };
}
