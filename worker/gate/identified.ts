import type { Visit } from '../visit/visit.ts';
import { electricalReferences } from './electrical-references.ts';

/** A list whose entries other parts of the record name, so that each may stand in it once. */
export interface IdentifiedList {
  what: string;
  path: readonly (string | number)[];
  /** Field of an entry that identifies it. */
  key: 'id' | 'station';
  ids: readonly string[];
}

/** Every list of identifiers in the record. */
export function identifiedLists(visit: Visit): IdentifiedList[] {
  const list = (what: string, path: readonly string[], entries: readonly { id: string }[] = []): IdentifiedList => ({
    what,
    path,
    key: 'id',
    ids: entries.map(({ id }) => id),
  });
  const fuelAboard = visit.weighing?.fuelAboard ?? [];
  return [
    list('person', ['people'], visit.people),
    list('station', ['aircraft', 'stations'], visit.aircraft.stations),
    list('loading limit', ['aircraft', 'loadingLimits'], visit.aircraft.loadingLimits),
    list('equipment item', ['baseline', 'equipment'], visit.baseline?.equipment),
    list('meter', ['meters', 'readings'], visit.meters?.readings),
    list('job', ['worksheet'], visit.worksheet),
    list('modification', ['modifications'], visit.modifications),
    list('task', ['inspection', 'tasks'], visit.inspection?.tasks),
    list('finding', ['findings'], visit.findings),
    list('part', ['parts'], visit.parts),
    list('attachment', ['attachments'], visit.attachments),
    list('source', ['electrical', 'sources'], visit.electrical?.sources),
    list('bus', ['electrical', 'buses'], visit.electrical?.buses),
    list('load', ['electrical', 'loads'], visit.electrical?.loads),
    list('circuit', ['electrical', 'circuits'], visit.electrical?.circuits),
    list('connector', ['wiring', 'connectors'], visit.wiring?.connectors),
    list('wiring point', ['wiring', 'points'], visit.wiring?.points),
    list('found wire', ['wiring', 'found'], visit.wiring?.found),
    list('antenna', ['antennas', 'items'], visit.antennas?.items),
    list('device', ['surveillance', 'devices'], visit.surveillance?.devices),
    list('bulletin', ['bulletins', 'items'], visit.bulletins?.items),
    list('due line', ['lives', 'items'], visit.lives?.items),
    list('scale', ['weighing', 'scales'], visit.weighing?.scales),
    list('weighing point', ['weighing', 'points'], visit.weighing?.points),
    {
      what: 'content for tank',
      path: ['weighing', 'fuelAboard'],
      key: 'station',
      ids: fuelAboard.map(({ station }) => station),
    },
  ];
}

/** A place where the record names an entry of another list. */
export interface Reference {
  what: string;
  id: string;
  path: readonly (string | number)[];
  known: readonly string[];
}

/** Every reference from one part of the record to another, people and the equipment lines of changes apart. */
export function references(visit: Visit): Reference[] {
  const ids = (entries: readonly { id: string }[] = []): string[] => entries.map(({ id }) => id);
  const { aircraft, weighing } = visit;
  const loadStations = ids(aircraft.stations.filter(({ kind }) => kind !== 'fuel'));
  const tanks = ids(aircraft.stations.filter(({ kind }) => kind === 'fuel'));
  const found: Reference[] = [];
  const add = (what: string, id: string | undefined, known: readonly string[], ...path: (string | number)[]): void => {
    if (id !== undefined) found.push({ what, id, path, known });
  };
  for (const [i, { stations }] of (aircraft.loadingLimits ?? []).entries()) {
    for (const [j, id] of stations.entries())
      add('load station', id, loadStations, 'aircraft', 'loadingLimits', i, 'stations', j);
  }
  for (const [i, point] of (weighing?.points ?? []).entries())
    add('scale', point.scale, ids(weighing?.scales), 'weighing', 'points', i, 'scale');
  for (const [i, fuel] of (weighing?.fuelAboard ?? []).entries())
    add('fuel station', fuel.station, tanks, 'weighing', 'fuelAboard', i, 'station');
  for (const [i, job] of (visit.worksheet ?? []).entries()) {
    for (const [j, id] of (job.after ?? []).entries()) add('job', id, ids(visit.worksheet), 'worksheet', i, 'after', j);
  }
  const lines = equipmentIds(visit);
  for (const [i, device] of (visit.surveillance?.devices ?? []).entries())
    add('equipment item', device.item, lines, 'surveillance', 'devices', i, 'item');
  for (const [i, check] of (visit.surveillance?.radioChecks ?? []).entries())
    add('equipment item', check.item, lines, 'surveillance', 'radioChecks', i, 'item');
  for (const [i, life] of (visit.lives?.items ?? []).entries())
    add('meter', life.meter, ids(visit.meters?.readings), 'lives', 'items', i, 'meter');
  for (const [i, task] of (visit.inspection?.tasks ?? []).entries())
    add('finding', task.finding, ids(visit.findings), 'inspection', 'tasks', i, 'finding');
  for (const [i, { changes }] of (visit.modifications ?? []).entries()) {
    for (const [j, change] of changes.entries()) {
      if ('part' in change) add('part', change.part, ids(visit.parts), 'modifications', i, 'changes', j, 'part');
    }
  }
  for (const [i, { concerns }] of (visit.attachments ?? []).entries())
    add('entry that an attachment can belong to', concerns, attachable(visit), 'attachments', i, 'concerns');
  return [...found, ...electricalReferences(visit, lines)];
}

/** Everything that a photograph or paper can belong to. */
function attachable(visit: Visit): string[] {
  const { findings, modifications, parts, inspection, bulletins, wiring } = visit;
  const lists = [findings, modifications, parts, inspection?.tasks, bulletins?.items, wiring?.found];
  return lists.flatMap((entries) => (entries ?? []).map(({ id }) => id));
}

/** Every line that the equipment list has or gets in this visit. */
function equipmentIds(visit: Visit): string[] {
  const fitted = (visit.modifications ?? []).flatMap(({ changes }) =>
    changes.flatMap((change) => (change.kind === 'replaced' ? [change.by.id] : 'id' in change ? [change.id] : [])),
  );
  const found = (visit.asFound ?? []).flatMap((line) => ('id' in line ? [line.id] : []));
  return [...(visit.baseline?.equipment ?? []).map(({ id }) => id), ...fitted, ...found];
}
