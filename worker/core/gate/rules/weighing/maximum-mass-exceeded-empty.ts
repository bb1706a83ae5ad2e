import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const maximumMassExceededEmpty: Rule = {
  code: 'MAXIMUM_MASS_EXCEEDED_EMPTY',
  severity: 'blocks',
  meaning: 'The empty aircraft is heavier than its maximum mass',
  remedy: m.maximumMassExceededEmpty_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const emptyKg = results.schedule?.massKg ?? 0;
    if (isAtMost(emptyKg, visit.aircraft.maximumMassKg)) return undefined;
    const [massText, limitText] = figure.apart('mass', emptyKg, visit.aircraft.maximumMassKg);
    return {
      path: ['aircraft', 'maximumMass'],
      sentence: said(m.maximumMassExceededEmpty_emptyMassExceedsMaximum, { mass: massText, limit: limitText }),
      data: { emptyKg, maximumKg: visit.aircraft.maximumMassKg },
    };
  },
};
