import * as m from '../../../text/generated/messages.ts';
import { hits } from '../../hits.ts';
import { loadingsOutside } from '../../loadings-outside.ts';
import { type Rule, read } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const pilotComputesLoading: Rule = {
  code: 'PILOT_COMPUTES_LOADING',
  severity: 'note',
  meaning: 'The limits of the type allow loadings outside the envelope: the pilot calculates each one',
  remedy: m.pilotComputesLoading_remedy,
  source: read('AC 43.13-1B ch. 10 (adverse-loaded checks)'),
  check: (input) =>
    hits(sheetsOf(input), (sheet) =>
      sheet.aircraft.limitsFrom === 'flight-manual' ? loadingsOutside(input.visit, sheet) : undefined,
    ),
};
