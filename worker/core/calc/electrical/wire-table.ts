import type { Gauge, Material } from '../../record/wire-size.ts';

// Aluminium wire is calculated as copper wire two gauge numbers thinner, by the note at AC 43.13-1B 11-66. The table
// of aluminium itself (11-10) could not be read; in every size the note gives less than the table as remembered.
// Sizes that the note does not cover (No. 1, and all below No. 8) are not rated and block. Change this once the
// table has been read.

export type TemperatureRatingC = '105' | '150' | '200';

/** Ampacity and resistance of one size of tin-plated copper wire. */
export interface WireSize {
  /** Continuous current by conductor temperature rating, under the conditions of note 1. */
  ampacityA: Readonly<Record<TemperatureRatingC, number>>;
  /** Max. resistance of 1000 ft at 20 °C. */
  ohmPer1000Ft: number;
}

const size = (a105: number, a150: number, a200: number, ohmPer1000Ft: number): WireSize => ({
  ampacityA: { '105': a105, '150': a150, '200': a200 },
  ohmPer1000Ft,
});

/** AC 43.13-1B table 11-9, copper wire (read). Stranded aircraft wire: not interchangeable with solid wire of the same gauge. */
export const WIRE_TABLE: Readonly<Partial<Record<Gauge, WireSize>>> = {
  '24': size(2.5, 4, 5, 28.4),
  '22': size(3, 5, 6, 16.2),
  '20': size(4, 7, 9, 9.88),
  '18': size(6, 9, 12, 6.23),
  '16': size(7, 11, 14, 4.81),
  '14': size(10, 14, 18, 3.06),
  '12': size(13, 19, 25, 2.02),
  '10': size(17, 26, 32, 1.26),
  '8': size(38, 57, 71, 0.7),
  '6': size(50, 76, 97, 0.44),
  '4': size(68, 103, 133, 0.28),
  '2': size(95, 141, 179, 0.18),
  '1': size(113, 166, 210, 0.15),
  '0': size(128, 192, 243, 0.12),
  '00': size(147, 222, 285, 0.09),
  '000': size(172, 262, 335, 0.07),
  '0000': size(204, 310, 395, 0.06),
};

/**
 * Aluminium wire, and the copper wire two numbers thinner with the current and resistance for its calculation by the
 * note at AC 43.13-1B 11-66 (read). No. 1 would match No. 3, which table 11-9 lacks; below No. 8 the note advises
 * against aluminium. Table 11-10, for aluminium itself, was not readable: from memory it allows a little more in every
 * size.
 */
const COPPER_OF_ALUMINIUM: Readonly<Partial<Record<Gauge, Gauge>>> = {
  '8': '10',
  '6': '8',
  '4': '6',
  '2': '4',
  '0': '2',
  '00': '1',
  '000': '0',
  '0000': '00',
};

/** Thinnest aluminium wire that the note does not advise against. */
export const MIN_ALUMINIUM: Gauge = '8';

/** A wire with the data that the tables need; copper if no material is stated. */
export interface Conductor {
  gauge: Gauge;
  material?: Material | undefined;
}

/**
 * Returns the copper wire whose row a wire is calculated by; undefined for aluminium without one.
 *
 * @source AC 43.13-1B, note at 11-66, read
 */
export function copperGauge({ gauge, material = 'copper' }: Conductor): Gauge | undefined {
  return material === 'copper' ? gauge : COPPER_OF_ALUMINIUM[gauge];
}

/** Returns the row of a wire; undefined for a size that the table lacks. */
export function wireSize(conductor: Conductor): WireSize | undefined {
  const gauge = copperGauge(conductor);
  return gauge && WIRE_TABLE[gauge];
}

/** Conditions of the currents in the table: its note 1 (read). */
export const TABLE_CONDITIONS = { ambientC: 70, bundleLoadPercent: 20, altitudeFt: 60_000 } as const;

/** Returns the wires of one bundle that the table allows: 33 for sizes 24 to 10, 9 for 8 and larger. */
export function tableBundleWires(conductor: Conductor): number {
  return ['24', '22', '20', '18', '16', '14', '12', '10'].includes(copperGauge(conductor) ?? '') ? 33 : 9;
}

const METRES_PER_1000_FT = 304.8;

/**
 * Returns the resistance of a metre at 20 °C, in ohms; undefined for a size that the table lacks.
 *
 * @source AC 43.13-1B table 11-9, read
 */
export function ohmPerM(conductor: Conductor): number | undefined {
  const row = wireSize(conductor);
  return row && row.ohmPer1000Ft / METRES_PER_1000_FT;
}
