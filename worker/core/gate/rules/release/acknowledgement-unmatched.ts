import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const acknowledgementUnmatched: Rule = {
  code: 'ACKNOWLEDGEMENT_UNMATCHED',
  severity: 'note',
  meaning: 'A caution is accepted that did not arise',
  remedy: m.acknowledgementUnmatched_remedy,
  source: PRACTICE,
  check: ({ visit, cautionCodes }) =>
    (visit.release?.acknowledgements ?? []).flatMap(({ code }, index): Hit[] =>
      cautionCodes.has(code)
        ? []
        : [
            {
              path: ['release', 'acknowledgements', index],
              sentence: said(m.acknowledgementUnmatched_acceptedButNoSuch, { code }),
              data: { code },
            },
          ],
    ),
};
