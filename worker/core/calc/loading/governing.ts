/** Limits that bound a load, in the order in which one is named if two are met at once. */
export const GOVERNING = [
  'maximum-mass',
  'envelope',
  'zero-fuel-mass',
  'landing-mass',
  'non-lifting-mass',
  'joint-limits',
  'places',
] as const;
