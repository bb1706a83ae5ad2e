import type { Visit } from '../visit/visit.ts';
import { phrase } from '../words/words.ts';
import { electricalReferences } from './electrical-references.ts';

/** A list whose entries other parts of the record name, so that each may stand in it once. */
export interface IdentifiedList {
  /** An entry of it, as a phrase. */
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
    list(phrase`person`, ['people'], visit.people),
    list(phrase`station`, ['aircraft', 'stations'], visit.aircraft.stations),
    list(phrase`loading limit`, ['aircraft', 'loadingLimits'], visit.aircraft.loadingLimits),
    list(phrase`equipment item`, ['baseline', 'equipment'], visit.baseline?.equipment),
    list(phrase`meter`, ['meters', 'readings'], visit.meters?.readings),
    list(phrase`job`, ['worksheet'], visit.worksheet),
    list(phrase`modification`, ['modifications'], visit.modifications),
    list(phrase`task`, ['inspection', 'tasks'], visit.inspection?.tasks),
    list(phrase`finding`, ['findings'], visit.findings),
    list(phrase`part`, ['parts'], visit.parts),
    list(phrase`attachment`, ['attachments'], visit.attachments),
    list(phrase`source`, ['electrical', 'sources'], visit.electrical?.sources),
    list(phrase`bus`, ['electrical', 'buses'], visit.electrical?.buses),
    list(phrase`load`, ['electrical', 'loads'], visit.electrical?.loads),
    list(phrase`circuit`, ['electrical', 'circuits'], visit.electrical?.circuits),
    list(phrase`connector`, ['wiring', 'connectors'], visit.wiring?.connectors),
    list(phrase`wiring point`, ['wiring', 'points'], visit.wiring?.points),
    list(phrase`found wire`, ['wiring', 'found'], visit.wiring?.found),
    list(phrase`antenna`, ['antennas', 'items'], visit.antennas?.items),
    list(phrase`device`, ['surveillance', 'devices'], visit.surveillance?.devices),
    list(phrase`bulletin`, ['bulletins', 'items'], visit.bulletins?.items),
    list(phrase`due line`, ['lives', 'items'], visit.lives?.items),
    list(phrase`scale`, ['weighing', 'scales'], visit.weighing?.scales),
    list(phrase`weighing point`, ['weighing', 'points'], visit.weighing?.points),
    {
      what: phrase`content for tank`,
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
      add(phrase`load station`, id, loadStations, 'aircraft', 'loadingLimits', i, 'stations', j);
  }
  for (const [i, point] of (weighing?.points ?? []).entries())
    add(phrase`scale`, point.scale, ids(weighing?.scales), 'weighing', 'points', i, 'scale');
  for (const [i, fuel] of (weighing?.fuelAboard ?? []).entries())
    add(phrase`fuel station`, fuel.station, tanks, 'weighing', 'fuelAboard', i, 'station');
  for (const [i, job] of (visit.worksheet ?? []).entries()) {
    for (const [j, id] of (job.after ?? []).entries())
      add(phrase`job`, id, ids(visit.worksheet), 'worksheet', i, 'after', j);
  }
  const lines = equipmentIds(visit);
  for (const [i, device] of (visit.surveillance?.devices ?? []).entries())
    add(phrase`equipment item`, device.item, lines, 'surveillance', 'devices', i, 'item');
  for (const [i, check] of (visit.surveillance?.radioChecks ?? []).entries())
    add(phrase`equipment item`, check.item, lines, 'surveillance', 'radioChecks', i, 'item');
  for (const [i, life] of (visit.lives?.items ?? []).entries())
    add(phrase`meter`, life.meter, ids(visit.meters?.readings), 'lives', 'items', i, 'meter');
  for (const [i, bulletin] of (visit.bulletins?.items ?? []).entries())
    add(phrase`meter`, bulletin.meter, ids(visit.meters?.readings), 'bulletins', 'items', i, 'meter');
  for (const [i, { deferral }] of (visit.findings ?? []).entries())
    add(phrase`meter`, deferral?.meter, ids(visit.meters?.readings), 'findings', i, 'deferral', 'meter');
  for (const [i, task] of (visit.inspection?.tasks ?? []).entries())
    add(phrase`finding`, task.finding, ids(visit.findings), 'inspection', 'tasks', i, 'finding');
  for (const [i, { changes }] of (visit.modifications ?? []).entries()) {
    for (const [j, change] of changes.entries()) {
      if ('part' in change) add(phrase`part`, change.part, ids(visit.parts), 'modifications', i, 'changes', j, 'part');
    }
  }
  for (const [i, { concerns }] of (visit.attachments ?? []).entries())
    add(phrase`entry that an attachment can belong to`, concerns, attachable(visit), 'attachments', i, 'concerns');
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
