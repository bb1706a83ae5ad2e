import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { printableLineOf } from '../../../text/printable.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Characters below which a reason cannot be a sentence. */
const MIN_LENGTH = 15;

export const acknowledgementThin: Rule = {
  code: 'ACKNOWLEDGEMENT_THIN',
  severity: 'blocks',
  meaning: 'The reason for accepting a caution is too short',
  remedy: m.acknowledgementThin_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['release', 'acknowledgements'], visit.release?.acknowledgements, ({ code, reason }) => {
      if (printableLineOf(reason).length >= MIN_LENGTH) return undefined;
      return {
        field: 'reason',
        sentence: said(m.acknowledgementThin_reasonAcceptingTooShort, { code }),
        data: { code },
      };
    }),
};
