import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const airworthinessFindingDeclined: Rule = {
  code: 'AIRWORTHINESS_FINDING_DECLINED',
  severity: 'blocks',
  meaning: 'A finding that bears on airworthiness was not put right',
  remedy: m.airworthinessFindingDeclined_remedy,
  source: read('UK ANO 2016 art. 47 (known non-compliance); ML.A.403'),
  check: ({ visit }) =>
    (visit.findings ?? []).flatMap(({ id, text, severity, disposition }, index): Hit[] => {
      if (severity !== 'airworthiness' || !disposition || disposition === 'rectified' || disposition === 'open')
        return [];
      return [
        {
          path: ['findings', index, 'disposition'],
          sentence: said(m.airworthinessFindingDeclined_findingBearsAirworthiness, {
            id,
            text,
            leftWatched:
              disposition === 'monitor' ? said(m.airworthinessFindingDeclined_leftWatched) : termOf(disposition),
          }),
          data: { finding: id, disposition },
        },
      ];
    }),
};
