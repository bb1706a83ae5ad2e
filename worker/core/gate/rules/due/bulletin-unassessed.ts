import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const bulletinUnassessed: Rule = {
  code: 'BULLETIN_UNASSESSED',
  severity: 'caution',
  meaning: 'A recommended bulletin that applies is open',
  remedy: m.bulletinUnassessed_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    (visit.bulletins?.items ?? []).flatMap(({ id, kind, status, subject }, index): Hit[] =>
      kind === 'recommended' && status === 'open' && results.applicability[index] !== 'does-not-apply'
        ? [
            {
              path: ['bulletins', 'items', index, 'status'],
              sentence: said(m.bulletinUnassessed_open, { id, subject }),
              data: { bulletin: id },
            },
          ]
        : [],
    ),
};
