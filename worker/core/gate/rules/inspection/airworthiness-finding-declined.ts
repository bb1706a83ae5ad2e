import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { leftAs } from '../../left-as.ts';
import { type Rule, read } from '../../rule.ts';

export const airworthinessFindingDeclined: Rule = {
  code: 'AIRWORTHINESS_FINDING_DECLINED',
  severity: 'blocks',
  meaning: 'A finding that affects airworthiness was not rectified',
  remedy: m.airworthinessFindingDeclined_remedy,
  source: read('UK ANO 2016 art. 47 (known non-compliance); ML.A.403'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, text, severity, disposition }) => {
      if (severity !== 'airworthiness' || !disposition || disposition === 'rectified' || disposition === 'open')
        return undefined;
      return {
        field: 'disposition',
        sentence: said(m.airworthinessFindingDeclined_findingBearsAirworthiness, {
          id,
          text,
          leftWatched: leftAs(disposition),
        }),
        data: { finding: id, disposition },
      };
    }),
};
