/** Classes of light aircraft. What each implies is a file of data in `classes`. */
export const CLASSES = [
  'three-axis',
  'weight-shift',
  'powered-parachute',
  'glider',
  'self-launching-glider',
  'gyroplane',
  'helicopter',
] as const;
export type AircraftClass = (typeof CLASSES)[number];

/** Class of a record whose version did not have one: its rules are those of that version. */
export const UNSTATED_CLASS = 'unstated';

/** Undercarriages, or what takes their place. */
export const UNDERCARRIAGES = [
  'nose-wheel',
  'tail-wheel',
  'single-wheel',
  'skids',
  'floats',
  'amphibian',
  'skis',
  'hung',
] as const;
