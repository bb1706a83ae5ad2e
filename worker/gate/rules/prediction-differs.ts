import { isAtMost } from '../../calc/limit-met.ts';
import { COVERAGE_FACTOR } from '../../calc/uncertainty.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const predictionDiffers: Rule = {
  code: 'PREDICTION_DIFFERS',
  severity: 'caution',
  meaning: 'The weighing differs from what the papers and the changes lead to by more than both uncertainties explain',
  remedy: phrase`Look for an item that the papers lack, a wrong arm or a scale; accept only with a reason`,
  source: PRACTICE,
  check: ({ results, regime, say }) => {
    const { comparison } = results;
    if (!comparison) return [];
    const massLimitKg = Math.max(regime.predictionToleranceKg.value, COVERAGE_FACTOR * comparison.standard.massKg);
    const armLimitMm = Math.max(regime.predictionToleranceMm.value, COVERAGE_FACTOR * comparison.standard.armMm);
    const { differenceKg, differenceMm } = comparison;
    if (isAtMost(Math.abs(differenceKg), massLimitKg) && isAtMost(Math.abs(differenceMm), armLimitMm)) return [];
    const [massText, massLimitText] = say.apart('mass', differenceKg, massLimitKg, { signed: true });
    const [armText, armLimitText] = say.apart('arm', differenceMm, armLimitMm, { signed: true });
    return [
      {
        path: ['weighing'],
        sentence: say.words`Weighed less predicted: ${massText} (limit ${massLimitText}) and ${armText} (limit ${armLimitText})`,
        data: { differenceKg, massLimitKg, differenceMm, armLimitMm },
      },
    ];
  },
};
