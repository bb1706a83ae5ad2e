import * as m from '../../../text/generated/messages.ts';
import { aboveMassCap, MASS_CAPS } from '../../mass-cap.ts';
import { type Rule, read } from '../../rule.ts';

export const maximumMassAboveRegime: Rule = {
  code: 'MAXIMUM_MASS_ABOVE_REGIME',
  severity: 'blocks',
  meaning: 'The maximum mass is above that of the aircraft to which the regime applies',
  remedy: m.maximumMassAboveRegime_remedy,
  source: read('ML.1(a); Regulation 748/2012 art. 1'),
  values: MASS_CAPS,
  check: (input) => aboveMassCap(input, m.maximumMassAboveRegime_above),
};
