import { envelopeOf } from '../../../calc/loading/envelope.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const envelopeNotUsable: Rule = {
  code: 'ENVELOPE_NOT_USABLE',
  severity: 'blocks',
  meaning: 'The envelope corners do not form a closed area',
  remedy: m.envelopeNotUsable_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { envelope } = visit.aircraft;
    if (!envelope || envelopeOf(envelope)) return undefined;
    return {
      path: ['aircraft', 'envelope'],
      sentence: said(m.envelopeNotUsable_cornersEnvelopeNotBound),
    };
  },
};
