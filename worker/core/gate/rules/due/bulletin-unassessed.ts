import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const bulletinUnassessed: Rule = {
  code: 'BULLETIN_UNASSESSED',
  severity: 'caution',
  meaning: 'A recommended bulletin that applies is open',
  remedy: m.bulletinUnassessed_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, ({ id, kind, status, subject }, index) =>
      kind === 'recommended' && status === 'open' && results.applicability[index] !== 'does-not-apply'
        ? {
            field: 'status',
            sentence: said(m.bulletinUnassessed_open, { id, subject }),
            data: { bulletin: id },
          }
        : undefined,
    ),
};
