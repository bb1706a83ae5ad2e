import type { Printer } from '../text/print.ts';
import type { Visit } from '../visit/visit.ts';

/** An arm that the record states, of what, and where. */
export interface StatedArm {
  what: string;
  armMm: number;
  path: readonly (string | number)[];
}

/** Every arm that has to lie within the airframe. */
export function statedArms(visit: Visit, say: Printer): StatedArm[] {
  const found: StatedArm[] = [];
  const add = (what: string, armMm: number | undefined, ...path: (string | number)[]): void => {
    if (armMm !== undefined) found.push({ what, armMm, path });
  };
  for (const [i, station] of visit.aircraft.stations.entries()) {
    add(station.name, 'armMm' in station ? station.armMm : undefined, 'aircraft', 'stations', i, 'arm');
    for (const [j, level] of ('armByVolume' in station ? (station.armByVolume ?? []) : []).entries()) {
      add(station.name, level.armMm, 'aircraft', 'stations', i, 'armByVolume', j, 'arm');
    }
  }
  for (const [i, item] of (visit.baseline?.equipment ?? []).entries())
    add(item.name, item.armMm, 'baseline', 'equipment', i, 'arm');
  for (const [i, line] of (visit.asFound ?? []).entries()) {
    if (line.kind === 'unlisted') add(line.name, line.armMm, 'asFound', i, 'arm');
    if (line.kind === 'different-mass') add(say.words`item ${line.item}`, line.armMm, 'asFound', i, 'arm');
  }
  for (const [i, { changes }] of (visit.modifications ?? []).entries()) {
    for (const [j, change] of changes.entries()) {
      const path = ['modifications', i, 'changes', j] as const;
      if (change.kind === 'installed') add(change.name, change.armMm, ...path, 'arm');
      if (change.kind === 'relocated') add(say.words`item ${change.item}`, change.armMm, ...path, 'arm');
      if (change.kind === 'replaced') add(change.by.name, change.by.armMm, ...path, 'by', 'arm');
    }
  }
  for (const [i, { name, position }] of (visit.antennas?.items ?? []).entries())
    add(name, position.armMm, 'antennas', 'items', i, 'position', 'arm');
  for (const [i, wire] of (visit.wiring?.wires ?? []).entries())
    add(say.words`wire ${wire.mark ?? i + 1}`, wire.armMm, 'wiring', 'wires', i, 'arm');
  const { points = [], itemsAboard = [], itemsMissing = [] } = visit.weighing ?? {};
  for (const [i, point] of points.entries()) add(point.name, point.armMm, 'weighing', 'points', i, 'arm');
  for (const [i, item] of itemsAboard.entries()) add(item.name, item.armMm, 'weighing', 'itemsAboard', i, 'arm');
  for (const [i, item] of itemsMissing.entries()) add(item.name, item.armMm, 'weighing', 'itemsMissing', i, 'arm');
  return found;
}
