import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { leftAs } from '../../left-as.ts';
import { type Rule, read } from '../../rule.ts';

export const limitFindingLeft: Rule = {
  code: 'LIMIT_FINDING_LEFT',
  severity: 'blocks',
  meaning: 'A finding near a limit is only monitored or was declined, and no limitation answers it',
  remedy: m.limitFindingLeft_remedy,
  source: read('14 CFR 43.11(b); ML.A.403'),
  check: ({ visit }) =>
    hitsIn(['findings'], visit.findings, ({ id, text, severity, disposition, limitation }) => {
      const isLeft = disposition === 'monitor' || disposition === 'declined';
      if (severity !== 'limit' || !isLeft || limitation !== undefined) return undefined;
      return {
        field: 'limitation',
        sentence: said(m.limitFindingLeft_noLimitation, {
          id,
          text,
          disposition: leftAs(disposition),
        }),
        data: { finding: id, disposition },
      };
    }),
};
