import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const bulletinUnsigned: Rule = {
  code: 'BULLETIN_UNSIGNED',
  severity: 'caution',
  meaning: 'Nobody is named who decided on a bulletin',
  remedy: m.bulletinUnsigned_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, ({ id, subject, status, by }) =>
      by || status === 'open'
        ? undefined
        : { field: 'by', sentence: said(m.bulletinUnsigned_nobodyDecided, { id, subject }), data: { bulletin: id } },
    ),
};
