import * as m from '../../../text/generated/messages.ts';
import { aboveMassCap, MASS_CAPS } from '../../mass-cap.ts';
import { mayBlockBy, memory, type Rule } from '../../rule.ts';

/** As MAXIMUM_MASS_ABOVE_REGIME, which is silent if the mass of the regime was not read. */
export const maximumMassUnconfirmed: Rule = {
  code: 'MAXIMUM_MASS_UNCONFIRMED',
  severity: 'caution',
  meaning: 'The maximum mass is above a mass of the regime that nobody has confirmed yet',
  remedy: m.maximumMassUnconfirmed_remedy,
  source: memory('SI 2021/879 art. 10'),
  values: MASS_CAPS,
  check: (input) =>
    mayBlockBy(input.regime, MASS_CAPS) ? undefined : aboveMassCap(input, m.maximumMassUnconfirmed_above),
};
