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
  meaning: 'The acceptance of a caution has no ground, or too short a reason',
  remedy: m.acknowledgementThin_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['release', 'acknowledgements'], visit.release?.acknowledgements, ({ code, ground, reason }) => {
      if (ground === undefined)
        return { field: 'ground', sentence: said(m.acknowledgementThin_noGround, { code }), data: { code } };
      if (printableLineOf(reason).length >= MIN_LENGTH) return undefined;
      return {
        field: 'reason',
        sentence: said(m.acknowledgementThin_reasonAcceptingTooShort, { code }),
        data: { code },
      };
    }),
};
