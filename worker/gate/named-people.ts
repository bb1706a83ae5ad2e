import type { Printer } from '../text/print.ts';
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
export function namedPeople(visit: Visit, at: string, say: Printer): NamedPerson[] {
  return [
    ...taskPeople(visit, say),
    ...modificationPeople(visit, say),
    ...weighingPeople(visit, say),
    ...findingPeople(visit, say),
    ...carriedPeople(visit, say),
    ...testPeople(visit, say),
    ...otherPeople(visit, say),
    ...releasePeople(visit, at, say),
  ];
}

const named = (person: string | undefined, rest: Omit<NamedPerson, 'person'>): NamedPerson[] =>
  person === undefined ? [] : [{ person, ...rest }];

function taskPeople(visit: Visit, say: Printer): NamedPerson[] {
  return (visit.inspection?.tasks ?? []).flatMap((task, index) => {
    const path = ['inspection', 'tasks', index] as const;
    const second = task.secondInspection;
    return [
      ...named(task.by, {
        path: [...path, 'by'],
        doing: say.words`did task ${task.id}`,
        ...(task.kind && { scope: task.kind }),
        ...(task.at && { on: dateOf(task.at) }),
      }),
      ...named(second?.by, {
        path: [...path, 'secondInspection', 'by'],
        doing: say.words`inspected task ${task.id} independently`,
        scope: 'independent-inspection',
        ...(second && { on: dateOf(second.at) }),
      }),
    ];
  });
}

function modificationPeople(visit: Visit, say: Printer): NamedPerson[] {
  return (visit.modifications ?? []).flatMap((modification, index) => {
    const path = ['modifications', index] as const;
    const on = dateOf(modification.finishedAt);
    return [
      ...modification.by.flatMap((person, step) =>
        named(person, { path: [...path, 'by', step], doing: say.words`embodied ${modification.id}`, on }),
      ),
      ...named(modification.inspectedBy, {
        path: [...path, 'inspectedBy'],
        doing: say.words`inspected ${modification.id}`,
        on,
      }),
      ...named(modification.classifiedBy, {
        path: [...path, 'classifiedBy'],
        doing: say.words`classified ${modification.id}`,
      }),
      ...(modification.tests ?? []).flatMap((test, step) =>
        named(test.by, { path: [...path, 'tests', step, 'by'], doing: say.words`tested ${modification.id}` }),
      ),
    ];
  });
}

function weighingPeople({ weighing }: Visit, say: Printer): NamedPerson[] {
  if (!weighing) return [];
  const on = dateOf(weighing.weighedAt);
  return [
    ...named(weighing.by, { path: ['weighing', 'by'], doing: say.words`weighed the aircraft`, scope: 'weighing', on }),
    ...named(weighing.checkedBy, { path: ['weighing', 'checkedBy'], doing: say.words`checked the weighing`, on }),
  ];
}

function findingPeople(visit: Visit, say: Printer): NamedPerson[] {
  return (visit.findings ?? []).flatMap((finding, index) => {
    const path = ['findings', index] as const;
    return [
      ...named(finding.foundBy, { path: [...path, 'foundBy'], doing: say.words`found ${finding.id}` }),
      ...named(finding.closedBy, { path: [...path, 'closedBy'], doing: say.words`closed ${finding.id}` }),
      ...named(finding.deferral?.by, {
        path: [...path, 'deferral', 'by'],
        doing: say.words`deferred ${finding.id}`,
        scope: 'release',
        on: dateOf(finding.foundAt ?? visit.visit.arrivedAt),
      }),
    ];
  });
}

function carriedPeople({ carried = [] }: Visit, say: Printer): NamedPerson[] {
  return carried.map(({ item, answer, by, at }, index) => ({
    person: by,
    path: ['carried', index, 'by'],
    doing: say.words`answered for ${item}`,
    // To give it more time is to decide on the release; to say what was done is not.
    ...(answer === 'extended' && { scope: 'release' as const, on: dateOf(at) }),
  }));
}

function testPeople(
  { wiring, surveillance, compass, engineRuns, controls, bulletins }: Visit,
  say: Printer,
): NamedPerson[] {
  const at = (person: string | undefined, doing: string, ...path: (string | number)[]): NamedPerson[] =>
    named(person, { path, doing });
  return [
    ...at(wiring?.test?.by, say.words`tested the wiring`, 'wiring', 'test', 'by'),
    ...at(
      surveillance?.transponderTest?.by,
      say.words`tested the transponder`,
      'surveillance',
      'transponderTest',
      'by',
    ),
    ...at(surveillance?.encoder?.by, say.words`compared the encoder`, 'surveillance', 'encoder', 'by'),
    ...at(surveillance?.altimeter?.by, say.words`tested the altimeter`, 'surveillance', 'altimeter', 'by'),
    ...at(surveillance?.staticSystem?.by, say.words`tested the static system`, 'surveillance', 'staticSystem', 'by'),
    ...(surveillance?.devices ?? []).flatMap(({ id, readBack }, i) =>
      at(readBack?.by, say.words`received ${id}`, 'surveillance', 'devices', i, 'readBack', 'by'),
    ),
    ...(surveillance?.radioChecks ?? []).flatMap(({ by }, i) =>
      at(by, say.words`checked a radio`, 'surveillance', 'radioChecks', i, 'by'),
    ),
    ...at(compass?.by, say.words`swung the compass`, 'compass', 'by'),
    ...(engineRuns ?? []).flatMap(({ by, heldBy }, i) => [
      ...at(by, say.words`ran the engine`, 'engineRuns', i, 'by'),
      ...at(heldBy, say.words`watched a run of the engine`, 'engineRuns', i, 'heldBy'),
    ]),
    ...(controls?.checks ?? []).flatMap(({ by, secondBy, axis }, i) => [
      ...at(by, say.words`proved ${say.term(axis)}`, 'controls', 'checks', i, 'by'),
      ...at(secondBy, say.words`watched ${say.term(axis)}`, 'controls', 'checks', i, 'secondBy'),
    ]),
    ...(bulletins?.items ?? []).flatMap(({ by, id }, i) =>
      at(by, say.words`assessed ${id}`, 'bulletins', 'items', i, 'by'),
    ),
  ];
}

function otherPeople(visit: Visit, say: Printer): NamedPerson[] {
  return [
    ...(visit.asFound ?? []).flatMap(({ by }, index) =>
      named(by, { path: ['asFound', index, 'by'], doing: say.words`surveyed the aircraft` }),
    ),
    ...(visit.worksheet ?? []).flatMap(({ by, id }, index) =>
      named(by, { path: ['worksheet', index, 'by'], doing: say.words`does job ${id}` }),
    ),
    ...(visit.attachments ?? []).flatMap(({ by, id }, index) =>
      named(by, { path: ['attachments', index, 'by'], doing: say.words`took or received ${id}` }),
    ),
    ...(visit.parts ?? []).flatMap(({ receivedBy, id }, index) =>
      named(receivedBy, { path: ['parts', index, 'receivedBy'], doing: say.words`received part ${id}` }),
    ),
  ];
}

function releasePeople({ release }: Visit, at: string, say: Printer): NamedPerson[] {
  if (!release) return [];
  return [
    ...named(release.by, {
      path: ['release', 'by'],
      doing: say.words`releases the aircraft`,
      scope: 'release',
      on: dateOf(at),
    }),
    ...(release.acknowledgements ?? []).flatMap(({ by }, index) =>
      named(by, {
        path: ['release', 'acknowledgements', index, 'by'],
        doing: say.words`accepts a caution`,
        scope: 'release',
        on: dateOf(at),
      }),
    ),
  ];
}
