import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const emptyMassAboveCap: Rule = {
  code: 'EMPTY_MASS_ABOVE_CAP',
  severity: 'blocks',
  meaning: 'The empty mass is above the cap of the category or type',
  remedy: phrase`Take equipment out, or change the category by an allowed route`,
  source: read('UK SI 2021/879 art. 10 and EU 2018/1139 Annex I(e) (mass classes)'),
  check: ({ visit, results, say }) => {
    const capKg = visit.aircraft.maximumEmptyMassKg;
    const emptyKg = results.schedule?.massKg;
    if (capKg === undefined || emptyKg === undefined || emptyKg <= capKg) return [];
    return [
      {
        path: ['aircraft', 'maximumEmptyMass'],
        sentence: say.words`The empty mass, ${say.measure('mass', emptyKg)}, is above its cap, ${say.measure('mass', capKg)}`,
        data: { emptyKg, capKg },
      },
    ];
  },
};
