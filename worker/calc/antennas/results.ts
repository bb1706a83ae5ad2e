import type { Antenna, Visit } from '../../visit/visit.ts';
import { dragN } from './drag.ts';
import { quarterWaveMm, wavelengthMm } from './wavelength.ts';

export type AntennasRecord = NonNullable<Visit['antennas']>;

export interface AntennaResult {
  id: string;
  wavelengthMm: number;
  quarterWaveMm: number;
  /** Length times loss, and the connectors; undefined where no cable is stated. */
  cableLossDb: number | undefined;
  /** Undefined without area or speed. */
  dragN: number | undefined;
  /** Greatest of the ratios measured. */
  standingWave: number | undefined;
}

/** Two antennas and what lies between them. */
export interface Spacing {
  /** Places in the record. */
  first: number;
  second: number;
  distanceMm: number;
  /** The greater of what their makers ask for; undefined where neither asks. */
  neededMm: number | undefined;
}

export interface AntennasResult {
  antennas: AntennaResult[];
  /** Every pair once. */
  spacings: Spacing[];
}

/**
 * Waves, loss, drag and spacing of every antenna.
 *
 * @source definition of the distance between two points
 */
export function antennaResults({ items, maximumSpeedKmh }: AntennasRecord): AntennasResult {
  return {
    antennas: items.map((antenna) => antennaResult(antenna, maximumSpeedKmh)),
    spacings: items.flatMap((one, first) =>
      items.slice(first + 1).map((other, step) => spacing(one, other, first, first + 1 + step)),
    ),
  };
}

function antennaResult(antenna: Antenna, speedKmh: number | undefined): AntennaResult {
  const { frequencyMhz, frontalAreaCm2, standingWaves = [] } = antenna;
  return {
    id: antenna.id,
    wavelengthMm: wavelengthMm(frequencyMhz),
    quarterWaveMm: quarterWaveMm(frequencyMhz),
    cableLossDb: antenna.cable && cableLossDb(antenna.cable),
    dragN: frontalAreaCm2 === undefined || speedKmh === undefined ? undefined : dragN(frontalAreaCm2, speedKmh),
    standingWave: standingWaves.length > 0 ? Math.max(...standingWaves.map(({ ratio }) => ratio)) : undefined,
  };
}

/**
 * Loss of a feed: its length by the loss of a metre, and every connector.
 *
 * @source common practice, no source
 */
export function cableLossDb(cable: NonNullable<Antenna['cable']>): number {
  return cable.lengthM * cable.lossDbPerM + cable.connectors * cable.lossDbPerConnector;
}

function spacing(one: Antenna, other: Antenna, first: number, second: number): Spacing {
  const asked = [one.leastSpacingMm, other.leastSpacingMm].filter((value) => value !== undefined);
  return {
    first,
    second,
    distanceMm: Math.hypot(
      one.position.armMm - other.position.armMm,
      one.position.rightMm - other.position.rightMm,
      one.position.upMm - other.position.upMm,
    ),
    neededMm: asked.length > 0 ? Math.max(...asked) : undefined,
  };
}
