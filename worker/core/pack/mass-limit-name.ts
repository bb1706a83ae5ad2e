import type { ExceededLimit } from '../calc/loading/verdict.ts';
import * as m from '../text/generated/messages.ts';
import type { Message } from '../text/message.ts';

type OfAircraft = Exclude<ExceededLimit, { id: string }>;

/** Names of the aircraft's mass limits, inside a sentence. */
export const MASS_LIMIT_NAMES: Readonly<Record<OfAircraft['kind'], Message>> = {
  'zero-fuel-mass': m.maximumZeroFuelMass,
  'landing-mass': m.maximumLandingMass,
  'non-lifting-mass': m.maximumNonLiftingMass,
  'mass-without-external-load': m.maximumMassWithoutExternalLoad,
};
