import { lastRun } from '../../calc/engine/engine-runs.ts';
import type { Results } from '../../calc/results.ts';
import { classDataOf } from '../../record/classes/index.ts';
import { isDriven } from '../../record/driven.ts';
import { type EquipmentKind, traitsOf } from '../../record/equipment-kind.ts';
import type { Evidence } from '../../record/not-required.ts';
import type { Visit } from '../../record/visit.ts';
import { dateOf, instantOf } from '../../units/calendar.ts';
import type { Axis, WorkEvent } from './event.ts';

/** What the record shows of one piece of evidence. */
export interface Showing {
  isShown: boolean;
  /** Time of the last one, if it is older than the work. */
  olderAt?: string | undefined;
  /** Where the evidence would be in the record. */
  path?: readonly (string | number)[];
}

/** The record and its results, in which evidence is searched. */
export interface Known {
  visit: Visit;
  results: Results;
}

type Shows = (input: Known, event: WorkEvent) => Showing;

/** Path of a field of a part of the record; of the part, if that is missing. */
const within = (part: unknown, path: readonly string[]): readonly string[] => (part ? path : path.slice(0, 1));

const shown = (isShown: boolean, path?: Showing['path']): Showing => ({ isShown, ...(path && { path }) });

/** Of times at which something was shown: whether one is not before the event. */
function since({ at }: WorkEvent, times: readonly (string | undefined)[], path?: Showing['path']): Showing {
  const known = times.filter((time) => time !== undefined).toSorted((a, b) => instantOf(a) - instantOf(b));
  const last = known.at(-1);
  const isShown = last !== undefined && (at === undefined || instantOf(last) >= instantOf(at));
  return { isShown, ...(path && { path }), ...(!isShown && last !== undefined && { olderAt: last }) };
}

/** Kinds that are part of the electrical system without being a load. */
const NO_LOADS: ReadonlySet<EquipmentKind | undefined> = new Set([
  'distribution',
  'loom',
  'push-to-talk',
  'headset-socket',
  'locator-switch',
  'power-socket',
  'starter',
  'battery',
  'back-up-battery',
  'traction-battery',
  'alternator',
  'regulator',
  'contactor',
]);

const ALTITUDE_SOURCES: ReadonlySet<EquipmentKind | undefined> = new Set([
  'altitude-encoder',
  'air-data-unit',
  'transponder-mode-c',
  'transponder-mode-s',
]);

/** Axes with a travel to measure. */
const TRAVELS: ReadonlySet<Axis> = new Set(['ailerons', 'elevator', 'rudder', 'flaps', 'airbrake']);

function checked(
  { visit }: Known,
  event: WorkEvent,
  axes: readonly Axis[] | undefined,
  isGood: (check: NonNullable<Known['visit']['controls']>['checks'][number]) => boolean,
): Showing {
  const path = event.happening === 'disturbed' ? event.path : within(visit.controls, ['controls', 'checks']);
  const checks = (visit.controls?.checks ?? []).filter(isGood);
  if (!axes?.length)
    return since(
      event,
      checks.map(({ at }) => at),
      path,
    );
  const showings = axes.map((axis) =>
    since(
      event,
      checks.filter((check) => check.axis === axis).map(({ at }) => at),
      path,
    ),
  );
  return showings.find(({ isShown }) => !isShown) ?? shown(true);
}

/** For each piece of evidence: whether the record shows it after an event, for the item of the event. */
export const EVIDENCE_SHOWN: Readonly<Record<Evidence, Shows>> = {
  'transponder-test': ({ visit }, event) =>
    since(
      event,
      [visit.surveillance?.transponderTest?.at],
      within(visit.surveillance, ['surveillance', 'transponderTest']),
    ),
  'read-back': ({ visit }, event) => {
    const { devices = [] } = visit.surveillance ?? {};
    const path = within(visit.surveillance, ['surveillance', 'devices']);
    if (event.happening !== 'marks-changed') {
      const own = devices.filter(({ item }) => item === event.item?.id);
      return since(
        event,
        own.map(({ readBack }) => readBack?.at),
        path,
      );
    }
    return (
      devices
        .filter(({ addressSet }) => addressSet !== undefined)
        .map(({ readBack }) => since(event, [readBack?.at], path))
        .find(({ isShown }) => !isShown) ?? shown(devices.length > 0, path)
    );
  },
  'encoder-check': ({ visit, results }, event) =>
    results.change.after.some(({ equipmentKind }) => ALTITUDE_SOURCES.has(equipmentKind))
      ? since(event, [visit.surveillance?.encoder?.at], within(visit.surveillance, ['surveillance', 'encoder']))
      : shown(true),
  'altimeter-test': ({ visit }, event) =>
    since(
      event,
      (visit.surveillance?.altimeters ?? [])
        .filter(({ item }) => item === undefined || item === event.item?.id)
        .map(({ at }) => at),
      within(visit.surveillance, ['surveillance', 'altimeters']),
    ),
  'static-test': ({ visit }, event) =>
    since(
      event,
      (visit.surveillance?.staticSystems ?? []).map(({ at }) => at),
      within(visit.surveillance, ['surveillance', 'staticSystems']),
    ),
  'pitot-test': ({ visit }, event) =>
    since(
      event,
      (visit.surveillance?.pitotSystems ?? []).filter(({ leak }) => leak !== undefined).map(({ at }) => at),
      within(visit.surveillance, ['surveillance', 'pitotSystems']),
    ),
  'radio-check': ({ visit }, event) =>
    since(
      event,
      (visit.surveillance?.radioChecks ?? [])
        .filter(({ item }) => event.kind !== 'vhf-radio' || item === undefined || item === event.item?.id)
        .map(({ at }) => at),
      within(visit.surveillance, ['surveillance', 'radioChecks']),
    ),
  'interference-check': ({ visit }) =>
    shown(
      visit.surveillance?.interferenceChecked === true,
      within(visit.surveillance, ['surveillance', 'interferenceChecked']),
    ),
  'load-analysis': ({ visit: { electrical } }, { item, kind }) => {
    const path = within(electrical, ['electrical', 'loads']);
    const isListed = electrical?.loads.some((load) => load.item === item?.id && load.change !== 'removed') ?? false;
    return shown(isListed || (electrical !== undefined && NO_LOADS.has(kind)), path);
  },
  'load-list': ({ visit: { electrical } }, { item }) => {
    const counted = electrical?.loads.filter((load) => load.item === item?.id) ?? [];
    return shown(
      electrical !== undefined && counted.every(({ change }) => change === 'removed'),
      within(electrical, ['electrical', 'loads']),
    );
  },
  'battery-entry': ({ visit: { electrical } }, { item }) =>
    shown(
      electrical !== undefined && electrical.battery?.item === item?.id,
      within(electrical, ['electrical', 'battery']),
    ),
  'continuity-test': ({ visit: { wiring } }, event) =>
    since(event, [wiring?.test?.at], within(wiring, ['wiring', 'test'])),
  'antenna-check': ({ visit: { antennas } }, { item }) => {
    const own = antennas?.items.filter((antenna) => item === undefined || antenna.item === item.id) ?? [];
    const isMeasured = own.some(
      ({ standingWaves, bondMilliohm }) => (standingWaves?.length ?? 0) > 0 || bondMilliohm !== undefined,
    );
    return shown(isMeasured, within(antennas, ['antennas', 'items']));
  },
  'compass-swing': ({ visit }, event) => since(event, [visit.compass?.swungAt], ['compass']),
  'control-check': (input, event) =>
    checked(
      input,
      event,
      event.happening === 'inspected' ? classDataOf(input.visit.aircraft).flightAxes : event.axes,
      ({ isDirectionRight }) => isDirectionRight,
    ),
  'control-travel': (input, event) => {
    const axes = event.axes?.filter((axis) => TRAVELS.has(axis)) ?? [];
    return axes.length === 0 ? shown(true) : checked(input, event, axes, ({ travel }) => travel !== undefined);
  },
  'free-movement': (input, event) =>
    checked(
      input,
      event,
      event.axes ?? classDataOf(input.visit.aircraft).flightAxes,
      ({ isFullAndFree }) => isFullAndFree,
    ),
  'second-inspection': ({ visit }, event) => {
    const seen = [
      ...(visit.modifications ?? [])
        .filter(({ id, by, inspectedBy }) => event.names.includes(id) && inspectedBy && !by.includes(inspectedBy))
        .map(({ inspectedAt }) => inspectedAt),
      ...(event.happening === 'opened'
        ? (visit.inspection?.tasks ?? [])
            .filter(({ secondInspection }) => secondInspection && !event.by.includes(secondInspection.by))
            .map(({ secondInspection }) => secondInspection?.at)
        : []),
    ];
    return since(event, seen, event.path);
  },
  'engine-run': (input, event) => {
    if (!hasEngine(input)) return shown(true);
    return since(event, [lastRun(input.visit.engineRuns ?? [], 'after')?.run.at], ['engineRuns']);
  },
  'leak-check': (input, event) => {
    if (!hasFluids(input)) return shown(true);
    const last = lastRun(input.visit.engineRuns ?? [], 'after');
    if (!last) return shown(false, ['engineRuns']);
    const path = ['engineRuns', last.index, 'leaksLookedFor'];
    return last.run.leaksLookedFor ? since(event, [last.run.at], path) : shown(false, path);
  },
  'new-weighing': ({ visit }, event) => since(event, [visit.weighing?.weighedAt], ['weighing']),
  'flight-test': ({ visit }, event) => {
    const index = (visit.modifications ?? []).findIndex(({ id }) => event.names.includes(id));
    const { flightTest } = visit.modifications?.[index] ?? {};
    return shown(flightTest !== undefined && flightTest !== 'none', ['modifications', index, 'flightTest']);
  },
  'part-document': (_, { part, path }) => shown(part !== undefined, [...path, 'part']),
  'due-line': ({ visit }, { item }) =>
    shown(visit.lives?.items.some(({ of }) => of === item?.id) ?? false, within(visit.lives, ['lives', 'items'])),
  'bulletin-search': ({ visit }) => {
    const { searchedOn, sources = [] } = visit.bulletins ?? {};
    return shown(searchedOn !== undefined && sources.length > 0, ['bulletins']);
  },
  'due-list': ({ visit, results }) =>
    shown((visit.lives?.items.length ?? 0) > 0 || results.open.held.some(({ kind }) => kind === 'due'), ['lives']),
  programme: ({ visit }) => shown(visit.inspection?.programme !== undefined, ['inspection', 'programme']),
  'closing-check': ({ visit: { closing, inspection } }, event) => {
    const path = ['closing'];
    if (closing && closing.by === undefined) return shown(false, [...path, 'by']);
    if (closing) return closing.at === undefined ? shown(true) : since(event, [closing.at], path);
    return shown(inspection?.toolsAccountedFor !== undefined && inspection.panelsClosed !== undefined, path);
  },
  'update-data': (_, { reference, path }) => shown(reference !== undefined, [...path, 'reference']),
  placard: ({ visit }, event) => {
    const index = (visit.modifications ?? []).findIndex(({ id }) => event.names.includes(id));
    const { placards = [] } = visit.modifications?.[index] ?? {};
    return shown(
      placards.some(({ state }) => state === 'in-place'),
      ['modifications', index, 'placards'],
    );
  },
  'special-inspection': ({ visit }, { occurrence, path }) => {
    const tasks = (visit.inspection?.tasks ?? []).filter(({ id }) => occurrence?.tasks?.includes(id));
    const day = occurrence?.on ?? '';
    const isDone = tasks.some(
      ({ result, reference, at }) =>
        (result === 'satisfactory' || result === 'rectified') && reference && (!at || dateOf(at) >= day),
    );
    return shown(isDone, [...path, 'tasks']);
  },
};

/** Whether something drives the aircraft; a record that names no engine may still list one as equipment. */
function hasEngine({ visit, results }: Known): boolean {
  return (
    isDriven(visit.aircraft) ||
    results.change.after.some(({ equipmentKind }) => equipmentKind === 'engine' || equipmentKind === 'motor') ||
    (visit.engineRuns?.length ?? 0) > 0
  );
}

/** Whether a leak is possible: not with an electric motor alone. */
function hasFluids(input: Known): boolean {
  const { visit, results } = input;
  const isWet =
    visit.aircraft.stations.some((station) => 'unusableL' in station) ||
    results.change.after.some(({ equipmentKind, traits }) => traitsOf({ kind: equipmentKind, traits }).has('wetted'));
  return hasEngine(input) && isWet;
}
