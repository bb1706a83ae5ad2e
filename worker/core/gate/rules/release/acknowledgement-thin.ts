import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { printableLineOf } from '../../../text/printable.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

/** Characters below which a reason cannot be a sentence. */
const MIN_LENGTH = 15;

export const acknowledgementThin: Rule = {
  code: 'ACKNOWLEDGEMENT_THIN',
  severity: 'blocks',
  meaning: 'The reason given for accepting a caution says nothing',
  remedy: m.acknowledgementThin_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.release?.acknowledgements ?? []).flatMap(({ code, reason }, index): Hit[] =>
      printableLineOf(reason).length >= MIN_LENGTH
        ? []
        : [
            {
              path: ['release', 'acknowledgements', index, 'reason'],
              sentence: said(m.acknowledgementThin_reasonAcceptingTooShort, { code }),
              data: { code },
            },
          ],
    ),
};
