import { envelopeIn, statesEnvelope } from '../../../calc/loading/aircraft-envelope.ts';
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
    const { aircraft } = visit;
    if (!statesEnvelope(aircraft) || envelopeIn(aircraft)) return undefined;
    return {
      path: ['aircraft', aircraft.envelopeEquations ? 'envelopeEquations' : 'envelope'],
      sentence: said(m.envelopeNotUsable_cornersEnvelopeNotBound),
    };
  },
};
