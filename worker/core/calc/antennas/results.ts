import type { Antenna, Visit } from '../../record/visit.ts';
import type { AntennaResult, AntennasResult, Spacing } from './antennas-result.ts';
import { dragN } from './drag.ts';
import { quarterWaveMm, wavelengthMm } from './wavelength.ts';

export type { AntennaResult, AntennasResult, Spacing } from './antennas-result.ts';

export type AntennasRecord = NonNullable<Visit['antennas']>;

/**
 * Returns wavelengths, feed loss, drag and spacing of every antenna.
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
 * Returns the loss of a feed in dB: length times loss per metre, plus every connector.
 *
 * @source common practice, no source
 */
export function cableLossDb(cable: NonNullable<Antenna['cable']>): number {
  return cable.lengthM * cable.lossDbPerM + cable.connectors * cable.lossDbPerConnector;
}

function spacing(one: Antenna, other: Antenna, first: number, second: number): Spacing {
  const asked = [one.minimumSpacingMm, other.minimumSpacingMm].filter((value) => value !== undefined);
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
