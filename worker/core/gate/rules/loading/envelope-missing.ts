import { statesEnvelope } from '../../../calc/loading/aircraft-envelope.ts';
import { classDataOf } from '../../../record/classes/index.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const envelopeMissing: Rule = {
  code: 'ENVELOPE_MISSING',
  severity: 'blocks',
  meaning: 'The aircraft has no envelope, but its class has centre of gravity limits',
  remedy: m.envelopeMissing_remedy,
  source: read('FAA-H-8083-1B (weight-shift aircraft alone have no such range)'),
  check: ({ visit }) => {
    const { aircraft } = visit;
    if (statesEnvelope(aircraft) || !classDataOf(aircraft).requires.envelope) return undefined;
    return {
      path: ['aircraft', 'envelope'],
      sentence: said(m.envelopeMissing_recordGivesNoMass),
      data: { class: aircraft.class },
    };
  },
};
