import type { ChangeLine } from '../../calc/equipment-change.ts';
import { total } from '../../calc/mass-moment.ts';
import { phrase } from '../../words/words.ts';
import type { PackContext } from '../context.ts';

const KINDS: Record<ChangeLine['kind'], string> = {
  removed: phrase`out`,
  installed: phrase`in`,
  relocated: phrase`moved`,
  correction: phrase`record`,
};

/** Signed lines of an equipment change with their total, as printed. */
export function changeRows(
  { say }: PackContext,
  lines: readonly ChangeLine[],
): { rows: Record<string, string>[]; totalMass: string; totalMoment: string } {
  const sum = total(lines);
  return {
    rows: lines.map(({ kind, item, name, massKg, armMm, momentKgMm, modification }) => ({
      kind: say.term(KINDS[kind]),
      item,
      name: name ?? say.words`Not on the list`,
      modification: modification ?? say.words`as found`,
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
