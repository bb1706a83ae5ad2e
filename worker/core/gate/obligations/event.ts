import { incomingItem } from '../../calc/mass/equipment-steps.ts';
import type { Results } from '../../calc/results.ts';
import { type EquipmentKind, type Trait, traitsOf } from '../../record/equipment-kind.ts';
import type { OpenedSystem } from '../../record/opened.ts';
import type { EquipmentItem, Occurrence, Visit } from '../../record/visit.ts';
import * as m from '../../text/generated/messages.ts';
import { list, type Said, said } from '../../text/message.ts';
import { termOf } from '../../text/terms.ts';
import { instantOf } from '../../units/calendar.ts';

/** What can happen to an item or to the aircraft. */
export type Happening =
  | 'fitted'
  | 'taken-out'
  | 'moved'
  | 'updated'
  | 'opened'
  | 'disturbed'
  | 'inspected'
  | 'part-inspected'
  | 'task-done'
  | 'occurred'
  | 'marks-changed';

/** What events are found in. */
export interface Happened {
  visit: Visit;
  results: Results;
  /** The aircraft after the last pack, if the record names that standing file. */
  aircraftBefore?: Partial<Visit['aircraft']> | undefined;
}

export type Axis = NonNullable<Visit['controls']>['checks'][number]['axis'];

/** Something that happened at this visit, from which obligations follow. */
export interface WorkEvent {
  happening: Happening;
  /** Identifier that a statement of inapplicability may name: of an item, a modification, an opening. */
  names: readonly string[];
  /** What happened, in words: the first part of a sentence. */
  words: Said;
  path: readonly (string | number)[];
  /** When it was finished; undefined if the record does not say. */
  at?: string | undefined;
  item?: EquipmentItem | undefined;
  /** Item that the fitted one replaces. */
  former?: EquipmentItem | undefined;
  kind?: EquipmentKind | undefined;
  traits: ReadonlySet<Trait>;
  system?: OpenedSystem | undefined;
  axes?: readonly Axis[] | undefined;
  update?: string | undefined;
  /** Data of an update, and entry of the parts trace of a fitted item. */
  reference?: string | undefined;
  part?: string | undefined;
  occurrence?: Occurrence | undefined;
  /** People who did it. */
  by: readonly string[];
}

/** Collects everything that happened at a visit, from changes, openings, disturbances, inspection and occurrences. */
export function eventsOf(input: Happened): WorkEvent[] {
  return [
    ...changeEvents(input),
    ...openings(input),
    ...disturbances(input),
    ...inspections(input),
    ...occurrences(input),
    ...newMarks(input),
  ];
}

const NO_TRAITS: ReadonlySet<Trait> = new Set();

function changeEvents({ visit, results }: Pick<Happened, 'visit' | 'results'>): WorkEvent[] {
  return results.change.changes.flatMap(({ modification: id, change, cameWith, listed, path }): WorkEvent[] => {
    const modification = visit.modifications?.find((each) => each.id === id);
    const base = { path, at: change.doneAt ?? modification?.finishedAt, by: modification?.by ?? [] };
    const about = (item: EquipmentItem, happening: Happening, former?: EquipmentItem): WorkEvent => ({
      ...base,
      happening,
      names: [item.id, id],
      words: said(HAPPENED[happening as keyof typeof HAPPENED], { modification: id, item: item.name }),
      item,
      former,
      kind: item.equipmentKind,
      traits: traitsOf({ kind: item.equipmentKind, traits: item.traits }),
    });
    if (change.kind === 'installed' || change.kind === 'replaced') {
      const fitted = incomingItem(change);
      const isGone = listed !== undefined && fitted?.equipmentKind !== listed.equipmentKind;
      return [
        ...(fitted ? [{ ...about(fitted, 'fitted', listed), part: change.part }] : []),
        ...(isGone ? [about(listed, 'taken-out')] : []),
      ];
    }
    if (!listed) return [];
    if (change.kind === 'removed')
      return cameWith.some(({ equipmentKind }) => equipmentKind === listed.equipmentKind)
        ? []
        : [about(listed, 'taken-out')];
    if (change.kind === 'relocated') return [about(listed, 'moved')];
    return [{ ...about(listed, 'updated'), update: change.what, reference: change.reference }];
  });
}

const HAPPENED = {
  fitted: m.event_fitted,
  'taken-out': m.event_takenOut,
  moved: m.event_moved,
  updated: m.event_updated,
} as const;

function openings({ visit, results }: Pick<Happened, 'visit' | 'results'>): WorkEvent[] {
  return (visit.opened ?? []).map(({ id, system, what, item: itemId, passes, closedAt, by }, index) => {
    const item = results.change.after.find((each) => each.id === itemId);
    return {
      happening: 'opened',
      names: itemId === undefined ? [id] : [id, itemId],
      words: said(m.event_opened, { what, system: termOf(system) }),
      path: ['opened', index],
      at: closedAt,
      item,
      kind: item?.equipmentKind,
      traits: item ? traitsOf({ kind: item.equipmentKind, traits: item.traits }) : NO_TRAITS,
      system,
      axes: passes,
      by: [by],
    };
  });
}

function disturbances({ visit }: Pick<Happened, 'visit'>): WorkEvent[] {
  return (visit.controls?.disturbed ?? []).map(({ axis, what, at }, index) => ({
    happening: 'disturbed',
    names: [axis],
    words: said(m.event_disturbed, { axis: termOf(axis), what }),
    path: ['controls', 'disturbed', index],
    at,
    traits: NO_TRAITS,
    axes: [axis],
    by: [],
  }));
}

function inspections({ visit }: Pick<Happened, 'visit'>): WorkEvent[] {
  const { inspection } = visit;
  if (!inspection) return [];
  const inspected: WorkEvent = {
    happening: inspection.extent === 'part' ? 'part-inspected' : 'inspected',
    names: ['inspection'],
    words: said(inspection.extent === 'part' ? m.event_partInspected : m.event_inspected, {
      inspection: inspection.kind,
    }),
    path: ['inspection'],
    traits: NO_TRAITS,
    by: [],
  };
  return [inspected, ...powerTasks(inspection)];
}

/** Scopes of tasks after which the engine is run. */
const POWER_SCOPES: ReadonlySet<string | undefined> = new Set(['engine', 'propeller']);

/** The last task on engine or propeller that was work, and no reading taken during the run. */
function powerTasks({ tasks }: NonNullable<Visit['inspection']>): WorkEvent[] {
  const done = tasks
    .map((task, index) => ({ task, index }))
    .filter(
      ({ task: { kind, result, duringRun } }) =>
        POWER_SCOPES.has(kind) && !duringRun && (result === 'satisfactory' || result === 'rectified'),
    )
    .toSorted((one, other) => (one.task.at && other.task.at ? instantOf(one.task.at) - instantOf(other.task.at) : 0));
  const last = done.at(-1);
  if (!last) return [];
  const { id, at, by } = last.task;
  return [
    {
      happening: 'task-done',
      names: [id],
      words: said(m.event_taskDone, { tasks: list(done.map(({ task }) => task.id).slice(-3)) }),
      path: ['inspection', 'tasks', last.index],
      at,
      traits: NO_TRAITS,
      by: by === undefined ? [] : [by],
    },
  ];
}

function occurrences({ visit }: Pick<Happened, 'visit'>): WorkEvent[] {
  return (visit.occurrences ?? []).map((occurrence, index) => ({
    happening: 'occurred',
    names: [occurrence.kind],
    words: said(m.event_occurred, { kind: termOf(occurrence.kind), text: occurrence.text }),
    path: ['occurrences', index],
    at: undefined,
    traits: NO_TRAITS,
    occurrence,
    by: [],
  }));
}

/** Marks or address that differ from those after the last pack. */
function newMarks({ visit, aircraftBefore: before }: Happened): WorkEvent[] {
  const { registration, address24 } = visit.aircraft;
  if (!before || (before.registration === registration && before.address24 === address24)) return [];
  return [
    {
      happening: 'marks-changed',
      names: ['marks'],
      words: said(m.event_marksChanged, { registration }),
      path: ['aircraft', before.registration === registration ? 'address24' : 'registration'],
      at: visit.visit.arrivedAt,
      traits: NO_TRAITS,
      by: [],
    },
  ];
}
