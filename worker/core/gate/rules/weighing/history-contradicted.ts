import { baselineEmpty } from '../../../calc/mass/baseline.ts';
import { cgMm, hasMass } from '../../../calc/mass/mass-moment.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Half a pound, and half a tenth of an inch with moments in thousands, can be rounding. */
const ROUNDING_KG = 0.25;
const ROUNDING_MM = 3;

export const historyContradicted: Rule = {
  code: 'HISTORY_CONTRADICTED',
  severity: 'blocks',
  meaning: 'The last line of the empty mass history differs from the baseline of that day',
  remedy: m.historyContradicted_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { baseline } = visit;
    const before = baselineEmpty(visit);
    const history = baseline?.history ?? [];
    const last = history.at(-1);
    // An earlier line is a step before the baseline.
    if (!baseline || !before || !last || last.date < baseline.date || !hasMass(before) || !hasMass(last))
      return undefined;
    const isSame =
      Math.abs(last.massKg - before.massKg) <= ROUNDING_KG && Math.abs(cgMm(last) - cgMm(before)) <= ROUNDING_MM;
    if (isSame) return undefined;
    return {
      path: ['baseline', 'history', history.length - 1],
      sentence: said(m.historyContradicted_last, {
        date: figure.date(last.date),
        mass: figure.measure('mass', last.massKg),
        arm: figure.measure('arm', cgMm(last)),
        baselineMass: figure.measure('mass', before.massKg),
        baselineArm: figure.measure('arm', cgMm(before)),
      }),
      data: { massKg: last.massKg, armMm: cgMm(last), baselineKg: before.massKg, baselineMm: cgMm(before) },
    };
  },
};
