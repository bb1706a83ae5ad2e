/** Sizes of wire, thinnest first, in their usual notation: American wire gauge, 0 to 0000 in zeros. */
export const GAUGES = [
  '26',
  '24',
  '22',
  '20',
  '18',
  '16',
  '14',
  '12',
  '10',
  '8',
  '6',
  '4',
  '2',
  '1',
  '0',
  '00',
  '000',
  '0000',
] as const;
export type Gauge = (typeof GAUGES)[number];

/** Metals of a conductor. */
export const MATERIALS = ['copper', 'aluminium'] as const;
export type Material = (typeof MATERIALS)[number];

/** Whether one wire is thinner than another. */
export function isThinner(a: Gauge, b: Gauge): boolean {
  return GAUGES.indexOf(a) < GAUGES.indexOf(b);
}
