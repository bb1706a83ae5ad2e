import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const acknowledgementUnmatched: Rule = {
  code: 'ACKNOWLEDGEMENT_UNMATCHED',
  severity: 'note',
  meaning: 'A caution is accepted that is not in this assessment',
  remedy: m.acknowledgementUnmatched_remedy,
  source: PRACTICE,
  check: ({ visit, cautionCodes }) =>
    hitsIn(['release', 'acknowledgements'], visit.release?.acknowledgements, ({ code }) => {
      if (cautionCodes.has(code)) return undefined;
      return {
        sentence: said(m.acknowledgementUnmatched_acceptedButNoSuch, { code }),
        data: { code },
      };
    }),
};
