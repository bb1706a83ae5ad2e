import * as m from '../../../text/generated/messages.ts';
import { hits } from '../../hits.ts';
import { loadingsOutside } from '../../loadings-outside.ts';
import { type Rule, read } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const envelopeExceededByLegalLoading: Rule = {
  code: 'ENVELOPE_EXCEEDED_BY_LEGAL_LOADING',
  severity: 'blocks',
  meaning: 'A permitted loading is outside the envelope, and the record does not say that the limits are the type’s',
  remedy: m.envelopeExceededByLegalLoading_remedy,
  source: read('AC 43.13-1B ch. 10 (adverse-loaded checks)'),
  check: (input) =>
    hits(sheetsOf(input), (sheet) =>
      sheet.aircraft.limitsFrom === 'flight-manual' ? undefined : loadingsOutside(input.visit, sheet),
    ),
};
