import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Empty mass as a share of maximum mass: from bare weight-shift machines to overloaded two-seaters. */
const MIN_SHARE = 0.25;
const MAX_SHARE = 1.5;

export const unitImplausible: Rule = {
  code: 'UNIT_IMPLAUSIBLE',
  severity: 'blocks',
  meaning: 'A mass does not fit the aircraft, often pounds entered as kilograms',
  remedy: m.unitImplausible_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { schedule } = results;
    if (!schedule) return undefined;
    const share = schedule.massKg / visit.aircraft.maximumMassKg;
    if (isAtLeast(share, MIN_SHARE) && isAtMost(share, MAX_SHARE)) return undefined;
    const path = visit.weighing ? ['weighing'] : ['baseline', 'emptyMass'];
    return {
      path,
      sentence: said(m.unitImplausible_emptyMassNotFit, {
        mass: figure.measure('mass', schedule.massKg),
        maximumMass: figure.measure('mass', visit.aircraft.maximumMassKg),
      }),
      data: { emptyKg: schedule.massKg, maximumKg: visit.aircraft.maximumMassKg },
    };
  },
};
