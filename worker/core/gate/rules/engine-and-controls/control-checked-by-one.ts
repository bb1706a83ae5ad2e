import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const controlCheckedByOne: Rule = {
  code: 'CONTROL_CHECKED_BY_ONE',
  severity: 'blocks',
  meaning: 'A control was proved by one person, or by the same person twice',
  remedy: m.controlCheckedByOne_remedy,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit }) =>
    (visit.controls?.checks ?? []).flatMap(({ axis, by, secondBy }, index): Hit[] =>
      secondBy && secondBy !== by
        ? []
        : [
            {
              path: ['controls', 'checks', index, 'secondBy'],
              sentence: said(m.controlCheckedByOne_provedOnePersonOnly, { axis: termOf(axis) }),
              data: { axis },
            },
          ],
    ),
};
