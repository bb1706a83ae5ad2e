import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const controlCheckedByOne: Rule = {
  code: 'CONTROL_CHECKED_BY_ONE',
  severity: 'blocks',
  meaning: 'A control was checked by one person only',
  remedy: m.controlCheckedByOne_remedy,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit }) =>
    hitsIn(['controls', 'checks'], visit.controls?.checks, ({ axis, by, secondBy }) => {
      if (secondBy && secondBy !== by) return undefined;
      return {
        field: 'secondBy',
        sentence: said(m.controlCheckedByOne_provedOnePersonOnly, { axis: termOf(axis) }),
        data: { axis },
      };
    }),
};
