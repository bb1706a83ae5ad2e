import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const metersRunBack: Rule = {
  code: 'METERS_RUN_BACK',
  severity: 'blocks',
  meaning: 'A meter reads less at release than at arrival',
  remedy: phrase`Correct the reading`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.meters?.readings ?? []).flatMap(({ id, inHours, outHours }, index): Hit[] => {
      if (isAtLeast(outHours, inHours)) return [];
      const [inText, outText] = say.plainApart(inHours, outHours, 1);
      return [
        {
          path: ['meters', 'readings', index, 'outHours'],
          sentence: say.words`Meter ${id} read ${inText} h at arrival and ${outText} h at release`,
          data: { inHours, outHours },
        },
      ];
    }),
};
