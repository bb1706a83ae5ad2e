import { isAtMost } from '../../calc/limit-met.ts';
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
    if (capKg === undefined || emptyKg === undefined || isAtMost(emptyKg, capKg)) return [];
    const [massText, limitText] = say.apart('mass', emptyKg, capKg);
    return [
      {
        path: ['aircraft', 'maximumEmptyMass'],
        sentence: say.words`The empty mass, ${massText}, is above its cap, ${limitText}`,
        data: { emptyKg, capKg },
      },
    ];
  },
};
