/** Scopes of a person's authorisation. `release` is the right to release the aircraft; the others are kinds of work. */
export const SCOPES = [
  'airframe',
  'engine',
  'propeller',
  'rotor',
  'gearbox',
  'wing',
  'canopy',
  'battery',
  'avionics',
  'electrical',
  'weighing',
  'independent-inspection',
  'release',
] as const;
export type Scope = (typeof SCOPES)[number];
