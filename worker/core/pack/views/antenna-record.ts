import type { AntennaResult, Spacing } from '../../calc/antennas/results.ts';
import type { Visit } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import { MIN } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { common, sources } from './common.ts';

type Antenna = NonNullable<Visit['antennas']>['items'][number];

export function antennaRecordView(context: PackContext): View {
  const { visit, results, fmt } = context;
  const items = visit.antennas?.items ?? [];
  const found = results.antennas;
  if (!found) throw new Error('Cannot fill the antenna record: the visit has none');
  return {
    ...common(context),
    ...accepted(context, '/antennas'),
    armUnit: fmt.unit('arm'),
    antennas: items.map((antenna, index) => antennaRow(context, antenna, found.antennas[index])),
    feeds: items.map((antenna, index) => feedRow(context, antenna, found.antennas[index])),
    hasSpacings: found.spacings.length > 0,
    spacings: found.spacings.map((spacing) => spacingRow(context, items, spacing)),
    ...sources(fmt.text(m.antennaRecord_quarterWaveC299), fmt.text(m.antennaRecord_dragD0000327)),
  };
}

function antennaRow({ fmt }: PackContext, antenna: Antenna, result: AntennaResult | undefined): Record<string, string> {
  const { name, use, frequencyMhz, position, groundPlane, needsGroundPlane } = antenna;
  const plate = groundPlane
    ? `${fmt.term(groundPlane.kind)}, ${groundPlane.size}`
    : needsGroundPlane
      ? fmt.text(m.none2)
      : fmt.text(m.antennaRecord_notNeeded);
  return {
    name,
    use: fmt.term(use),
    frequency: fmt.plain(frequencyMhz, 2),
    place: `${fmt.number('arm', position.armMm)}, ${fmt.term(position.side, 'antenna-record')}`,
    quarter: result ? fmt.number('arm', result.quarterWaveMm) : DASH,
    plate,
    radius: groundPlane ? fmt.number('arm', groundPlane.minimumRadiusMm) : DASH,
    bond: antenna.bondMilliohm === undefined ? DASH : fmt.plain(antenna.bondMilliohm, 1),
  };
}

function feedRow(
  { fmt }: PackContext,
  { name, cable, standingWaveLimit }: Antenna,
  result: AntennaResult | undefined,
): Record<string, string> {
  const two = (value: number | undefined): string => (value === undefined ? DASH : fmt.plain(value, 2));
  return {
    name,
    cable: cable ? `${cable.type}, ${fmt.plain(cable.lengthM, 1)} m` : DASH,
    loss: two(result?.cableLossDb),
    limit: two(cable?.limitDb),
    standing: two(result?.standingWave),
    standingLimit: two(standingWaveLimit),
    drag: two(result?.dragN),
  };
}

function spacingRow(
  { fmt }: PackContext,
  items: readonly Antenna[],
  { first, second, distanceMm, neededMm }: Spacing,
): Record<string, string> {
  return {
    pair: `${items[first]?.name ?? DASH} – ${items[second]?.name ?? DASH}`,
    distance: fmt.number('arm', distanceMm),
    needed: neededMm === undefined ? DASH : fmt.number('arm', neededMm, MIN),
  };
}
