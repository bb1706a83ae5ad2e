import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const complianceUnshown: Rule = {
  code: 'COMPLIANCE_UNSHOWN',
  severity: 'blocks',
  meaning: 'A bulletin is said to be complied with, but not when, how or where it stands',
  remedy: phrase`Enter revision, method, day and evidence`,
  source: read('14 CFR 91.417(a)(2)(v) as summarised (method, number, revision)'),
  check: ({ visit, say }) =>
    (visit.bulletins?.items ?? []).flatMap(
      ({ id, status, revision, method, doneOn, evidence, subject }, index): Hit[] => {
        if (status !== 'complied' || (revision && method && doneOn && evidence)) return [];
        return [
          {
            path: ['bulletins', 'items', index],
            sentence: say.words`${id}, ${subject}: revision, method, day or evidence of compliance is missing`,
            data: { bulletin: id },
          },
        ];
      },
    ),
};
