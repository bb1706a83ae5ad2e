import * as m from '../text/generated/messages.ts';

/** Limits that follow from the visit and are in every pack, by their identifiers. */
export const OWNER_LIMIT_NAMES = {
  'empty-mass': m.emptyMass,
  'empty-arm': m.emptyCentreGravity,
  'maximum-mass': m.maximumMass,
  'zero-fuel-mass': m.maximumZeroFuelMass2,
  'landing-mass': m.maximumLandingMass2,
  'useful-load': m.crewBaggageFuelTogether,
  'full-tanks-payload': m.leftCrewBaggageFull,
  'least-pilot': m.leastSoloPilot,
} as const;
