import type {
  Aircraft,
  AsFoundLine,
  Baseline,
  Change,
  EquipmentItem,
  LoadedAircraft,
  Station,
  Visit,
  Weighing,
} from '../../record/visit.ts';
import { walkEquipment } from '../mass/equipment-steps.ts';

// The lateral axis is the same computation over another coordinate: these functions return a visit, or an aircraft, whose
// arms are its lateral arms, or a mixture of both. What has no lateral arm lies on the centre line; the release check
// reports it where lateral limits hold.

/** A direction in the plane of the two arms: along · arm + across · lateral arm. */
export interface Direction {
  along: number;
  across: number;
}

export const ACROSS: Direction = { along: 0, across: 1 };

/**
 * Returns the arm of something along a direction, in mm.
 *
 * @source definition of the scalar product
 */
export function armAlong(
  { along, across }: Direction,
  { armMm = 0, lateralArmMm = 0 }: { armMm?: number | undefined; lateralArmMm?: number | undefined },
): number {
  return along * armMm + across * lateralArmMm;
}

/** Returns an aircraft whose stations have their arms along a direction. */
export function turned<Of extends Pick<LoadedAircraft, 'stations'>>(aircraft: Of, direction: Direction): Of {
  return { ...aircraft, stations: aircraft.stations.map((station) => turnedStation(station, direction)) };
}

function turnedStation(station: Station, direction: Direction): Station {
  const armMm = armAlong(direction, station);
  if (!('capacityL' in station) || !station.armByVolume) return { ...station, armMm };
  const { lateralArmMm } = station;
  const armByVolume = station.armByVolume.map((row) => ({
    ...row,
    armMm: armAlong(direction, { armMm: row.armMm, lateralArmMm: row.lateralArmMm ?? lateralArmMm }),
  }));
  return { ...station, armMm, armByVolume };
}

/** Returns the visit as seen across: its arms are the lateral arms, its moments the lateral moments. */
export function acrossOf(visit: Visit): Visit {
  const { aircraft, baseline, asFound, modifications, weighing } = visit;
  const { corrections, changes } = walkEquipment(visit);
  // An item that moves keeps its lateral arm if the record states no other.
  const listed = new Map([...corrections, ...changes].map(({ path, listed: item }) => [path.join('/'), item]));
  const keptMm = (...path: (string | number)[]): number => listed.get(path.join('/'))?.lateralArmMm ?? 0;
  return {
    ...visit,
    aircraft: { ...turned(aircraft, ACROSS), levelAttitude: acrossAttitude(aircraft.levelAttitude) } satisfies Aircraft,
    ...(baseline && { baseline: acrossBaseline(baseline) }),
    ...(asFound && { asFound: asFound.map((line, index) => acrossLine(line, keptMm('asFound', index))) }),
    ...(modifications && {
      modifications: modifications.map((each, index) => ({
        ...each,
        changes: each.changes.map((change, step) =>
          acrossChange(change, keptMm('modifications', index, 'changes', step)),
        ),
      })),
    }),
    ...(weighing && { weighing: acrossWeighing(weighing) }),
  };
}

const acrossItem = <Item extends { armMm: number; lateralArmMm?: number | undefined }>(item: Item): Item => ({
  ...item,
  armMm: item.lateralArmMm ?? 0,
});

function acrossBaseline(baseline: Baseline): Baseline {
  const { emptyLateralArmMm, emptyLateralMomentKgMm, equipment, history } = baseline;
  return {
    ...baseline,
    emptyArmMm: emptyLateralArmMm,
    emptyMomentKgMm: emptyLateralMomentKgMm,
    emptyArmLimitMm: undefined,
    equipment: equipment?.map((item): EquipmentItem => acrossItem(item)),
    history: history?.map((entry) => ({ ...entry, momentKgMm: entry.lateralMomentKgMm ?? 0 })),
  };
}

function acrossLine(line: AsFoundLine, keptMm: number): AsFoundLine {
  if (line.kind === 'different-mass') return { ...line, armMm: line.lateralArmMm ?? keptMm };
  return 'armMm' in line ? acrossItem(line) : line;
}

function acrossChange(change: Change, keptMm: number): Change {
  if (change.kind === 'relocated') return { ...change, armMm: change.lateralArmMm ?? keptMm };
  if (change.kind === 'replaced') return { ...change, by: acrossItem(change.by) };
  if (change.kind === 'exchanged') return { ...change, in: change.in.map((item) => acrossItem(item)) };
  return 'armMm' in change ? acrossItem(change) : change;
}

function acrossAttitude(attitude: Aircraft['levelAttitude']): Aircraft['levelAttitude'] {
  return attitude && { ...attitude, longitudinalDeg: attitude.lateralDeg };
}

function acrossWeighing(weighing: Weighing): Weighing {
  const { points, itemsAboard, itemsMissing } = weighing;
  return {
    ...weighing,
    level: weighing.level && { ...weighing.level, longitudinalDeg: weighing.level.lateralDeg },
    points: points.map((point) => ({
      ...acrossItem(point),
      armLimitMm: point.lateralArmLimitMm ?? point.armLimitMm,
    })),
    itemsAboard: itemsAboard?.map((item) => acrossItem(item)),
    itemsMissing: itemsMissing?.map((item) => acrossItem(item)),
    oilArmMm: weighing.oilArmMm === undefined ? undefined : 0,
  };
}
