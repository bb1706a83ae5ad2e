import { dateOf } from '../units/calendar.ts';
import type { Scope } from '../visit/people.ts';
import type { Visit } from '../visit/visit.ts';

/** A place where the record names a person, with the scope and the day that their authorisation has to cover. */
export interface NamedPerson {
  person: string;
  path: readonly (string | number)[];
  /** What the person does there, in words. */
  doing: string;
  scope?: Scope;
  on?: string;
}

/** Every place where the record names a person. */
export function namedPeople(visit: Visit, at: string): NamedPerson[] {
  return [
    ...taskPeople(visit),
    ...modificationPeople(visit),
    ...weighingPeople(visit),
    ...findingPeople(visit),
    ...testPeople(visit),
    ...otherPeople(visit),
    ...releasePeople(visit, at),
  ];
}

const named = (person: string | undefined, rest: Omit<NamedPerson, 'person'>): NamedPerson[] =>
  person === undefined ? [] : [{ person, ...rest }];

function taskPeople(visit: Visit): NamedPerson[] {
  return (visit.inspection?.tasks ?? []).flatMap((task, index) => {
    const path = ['inspection', 'tasks', index] as const;
    const second = task.secondInspection;
    return [
      ...named(task.by, {
        path: [...path, 'by'],
        doing: `did task ${task.id}`,
        ...(task.kind && { scope: task.kind }),
        ...(task.at && { on: dateOf(task.at) }),
      }),
      ...named(second?.by, {
        path: [...path, 'secondInspection', 'by'],
        doing: `inspected task ${task.id} independently`,
        scope: 'independent-inspection',
        ...(second && { on: dateOf(second.at) }),
      }),
    ];
  });
}

function modificationPeople(visit: Visit): NamedPerson[] {
  return (visit.modifications ?? []).flatMap((modification, index) => {
    const path = ['modifications', index] as const;
    const on = dateOf(modification.finishedAt);
    return [
      ...modification.by.flatMap((person, step) =>
        named(person, { path: [...path, 'by', step], doing: `embodied ${modification.id}`, on }),
      ),
      ...named(modification.inspectedBy, { path: [...path, 'inspectedBy'], doing: `inspected ${modification.id}`, on }),
      ...named(modification.classifiedBy, { path: [...path, 'classifiedBy'], doing: `classified ${modification.id}` }),
      ...(modification.tests ?? []).flatMap((test, step) =>
        named(test.by, { path: [...path, 'tests', step, 'by'], doing: `tested ${modification.id}` }),
      ),
    ];
  });
}

function weighingPeople({ weighing }: Visit): NamedPerson[] {
  if (!weighing) return [];
  const on = dateOf(weighing.weighedAt);
  return [
    ...named(weighing.by, { path: ['weighing', 'by'], doing: 'weighed the aircraft', scope: 'weighing', on }),
    ...named(weighing.checkedBy, { path: ['weighing', 'checkedBy'], doing: 'checked the weighing', on }),
  ];
}

function findingPeople(visit: Visit): NamedPerson[] {
  return (visit.findings ?? []).flatMap((finding, index) => {
    const path = ['findings', index] as const;
    return [
      ...named(finding.foundBy, { path: [...path, 'foundBy'], doing: `found ${finding.id}` }),
      ...named(finding.closedBy, { path: [...path, 'closedBy'], doing: `closed ${finding.id}` }),
      ...named(finding.deferral?.by, {
        path: [...path, 'deferral', 'by'],
        doing: `deferred ${finding.id}`,
        scope: 'release',
        on: dateOf(finding.foundAt ?? visit.visit.arrivedAt),
      }),
    ];
  });
}

function testPeople({ wiring, surveillance, compass, engineRuns, controls, bulletins }: Visit): NamedPerson[] {
  const at = (person: string | undefined, doing: string, ...path: (string | number)[]): NamedPerson[] =>
    named(person, { path, doing });
  return [
    ...at(wiring?.test?.by, 'tested the wiring', 'wiring', 'test', 'by'),
    ...at(surveillance?.transponderTest?.by, 'tested the transponder', 'surveillance', 'transponderTest', 'by'),
    ...at(surveillance?.encoder?.by, 'compared the encoder', 'surveillance', 'encoder', 'by'),
    ...at(surveillance?.altimeter?.by, 'tested the altimeter', 'surveillance', 'altimeter', 'by'),
    ...at(surveillance?.staticSystem?.by, 'tested the static system', 'surveillance', 'staticSystem', 'by'),
    ...(surveillance?.devices ?? []).flatMap(({ id, readBack }, i) =>
      at(readBack?.by, `received ${id}`, 'surveillance', 'devices', i, 'readBack', 'by'),
    ),
    ...(surveillance?.radioChecks ?? []).flatMap(({ by }, i) =>
      at(by, 'checked a radio', 'surveillance', 'radioChecks', i, 'by'),
    ),
    ...at(compass?.by, 'swung the compass', 'compass', 'by'),
    ...(engineRuns ?? []).flatMap(({ by, heldBy }, i) => [
      ...at(by, 'ran the engine', 'engineRuns', i, 'by'),
      ...at(heldBy, 'watched a run of the engine', 'engineRuns', i, 'heldBy'),
    ]),
    ...(controls?.checks ?? []).flatMap(({ by, secondBy, axis }, i) => [
      ...at(by, `proved ${axis}`, 'controls', 'checks', i, 'by'),
      ...at(secondBy, `watched ${axis}`, 'controls', 'checks', i, 'secondBy'),
    ]),
    ...(bulletins?.items ?? []).flatMap(({ by, id }, i) => at(by, `assessed ${id}`, 'bulletins', 'items', i, 'by')),
  ];
}

function otherPeople(visit: Visit): NamedPerson[] {
  return [
    ...(visit.asFound ?? []).flatMap(({ by }, index) =>
      named(by, { path: ['asFound', index, 'by'], doing: 'surveyed the aircraft' }),
    ),
    ...(visit.worksheet ?? []).flatMap(({ by, id }, index) =>
      named(by, { path: ['worksheet', index, 'by'], doing: `does job ${id}` }),
    ),
    ...(visit.attachments ?? []).flatMap(({ by, id }, index) =>
      named(by, { path: ['attachments', index, 'by'], doing: `took or received ${id}` }),
    ),
    ...(visit.parts ?? []).flatMap(({ receivedBy, id }, index) =>
      named(receivedBy, { path: ['parts', index, 'receivedBy'], doing: `received part ${id}` }),
    ),
  ];
}

function releasePeople({ release }: Visit, at: string): NamedPerson[] {
  if (!release) return [];
  return [
    ...named(release.by, { path: ['release', 'by'], doing: 'releases the aircraft', scope: 'release', on: dateOf(at) }),
    ...(release.acknowledgements ?? []).flatMap(({ by }, index) =>
      named(by, {
        path: ['release', 'acknowledgements', index, 'by'],
        doing: 'accepts a caution',
        scope: 'release',
        on: dateOf(at),
      }),
    ),
  ];
}
