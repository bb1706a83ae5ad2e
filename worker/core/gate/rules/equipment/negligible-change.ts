import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, type RuleInput, read } from '../../rule.ts';

export const negligibleChange: Rule = {
  code: 'NEGLIGIBLE_CHANGE',
  severity: 'note',
  meaning: 'The change of empty mass and centre of gravity is negligible',
  remedy: m.negligibleChange_remedy,
  source: read('AC 43.13-1B para 10-2c'),
  values: ['negligibleMassKg', 'negligibleMacPercent'],
  check: (input) => {
    const { massKg } = input.results.change;
    // An update in place changes no mass, so that there is nothing to neglect.
    const lines = input.results.change.lines.filter(({ kind }) => kind !== 'updated');
    const limitKg = input.regime.negligibleMassKg.value;
    const limitPercent = input.regime.negligibleMacPercent.value;
    const shiftPercent = shiftPercentMac(input);
    const totalKg = lines.reduce((sum, line) => sum + Math.abs(line.massKg), 0);
    if (limitKg === null || lines.length === 0 || !isAtMost(totalKg, limitKg)) return undefined;
    // Without a chord the shift is unknown, and half a pound moved from nose to tail is not negligible.
    if (shiftPercent === undefined || (limitPercent !== null && isAtLeast(shiftPercent, limitPercent)))
      return undefined;
    const masses = said(m.negligibleChange_allLimit, {
      total: figure.measure('mass', totalKg, { extra: 1 }),
      limit: figure.measure('mass', limitKg, { extra: 1 }),
    });
    return {
      path: ['modifications'],
      sentence: said(m.negligibleChange_changesCountNegligibleCentre, {
        masses,
        shiftPercent: figure.plain(shiftPercent, 3),
      }),
      data: { totalKg, changeKg: massKg, limitKg, shiftPercent },
    };
  },
};

/** How far the changes move the empty centre of gravity, in per cent of the mean aerodynamic chord. */
function shiftPercentMac({ visit, results }: RuleInput): number | undefined {
  const { mac } = visit.aircraft;
  const { prediction } = results;
  return mac && prediction && (Math.abs(prediction.armMm - prediction.baseline.armMm) / mac.lengthMm) * 100;
}
