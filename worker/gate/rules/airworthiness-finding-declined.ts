import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const airworthinessFindingDeclined: Rule = {
  code: 'AIRWORTHINESS_FINDING_DECLINED',
  severity: 'blocks',
  meaning: 'A finding that bears on airworthiness was not put right',
  remedy: phrase`Rectify it before flight`,
  source: read('UK ANO 2016 art. 47 (known non-compliance); ML.A.403'),
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, text, severity, disposition }, index): Hit[] => {
      if (severity !== 'airworthiness' || !disposition || disposition === 'rectified' || disposition === 'open')
        return [];
      return [
        {
          path: ['findings', index, 'disposition'],
          sentence: say.words`Finding ${id}, ${text}, bears on airworthiness and was ${disposition === 'monitor' ? say.words`left to be watched` : say.term(disposition)}`,
          data: { finding: id, disposition },
        },
      ];
    }),
};
