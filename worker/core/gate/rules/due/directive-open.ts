import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const directiveOpen: Rule = {
  code: 'DIRECTIVE_OPEN',
  severity: 'blocks',
  meaning: 'A directive or mandatory bulletin that applies is open or declined',
  remedy: m.directiveOpen_remedy,
  source: read('14 CFR 91.417; ML.A.301(d)'),
  check: ({ visit, results }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, ({ id, kind, status, subject }, index) => {
      const binds = kind === 'directive' || kind === 'mandatory';
      if (!binds || results.applicability[index] === 'does-not-apply' || (status !== 'open' && status !== 'declined'))
        return undefined;
      return {
        field: 'status',
        sentence: said(m.directiveOpen_binds, { id, subject, status: termOf(status) }),
        data: { bulletin: id },
      };
    }),
};
