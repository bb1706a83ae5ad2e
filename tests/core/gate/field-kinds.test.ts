import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { type Meaning, meaningOf, quantityOf } from '../../../worker/core/record/meaning.ts';
import { VisitRecord } from '../../../worker/core/record/record.ts';
import type { FieldKind, MeaningOf } from '../../../worker/core/record/record-index.ts';
import type { Schema } from '../../../worker/core/record/schema-node.ts';
import { SCOPES } from '../../../worker/core/record/scopes.ts';
import { readFixture } from '../../read-fixture.ts';
import { type SchemaField, schemaFields, withField } from '../record/schema-fields.ts';
import { assessRecord, RELEASABLE_AT } from './assess-record.ts';

/** A record with nearly every part; what it lacks is made of the examples of the schema. Its arms are in mm. */
const FULL = {
  ...(readFixture('visits/nose-wheel-full') as object),
  standing: { pack: 'Q-SLM-P1-1', sha256: '0'.repeat(64), kept: {} },
};
/** Fifteen minutes after the end of work. */
const AT = RELEASABLE_AT['nose-wheel-full'] ?? '';
const AFTER_WORK = '2026-11-05T14:10:00+01:00';

const FIELDS = schemaFields(VisitRecord);

type Field<Kind extends FieldKind> = SchemaField & { means: MeaningOf<Kind> };

function ofKind<Kind extends Exclude<FieldKind, 'text'>>(kind: Kind): Field<Kind>[] {
  const isIt = (means: Meaning | undefined): means is MeaningOf<Kind> & Meaning => means?.kind === kind;
  return FIELDS.flatMap((field) => {
    const means = meaningOf(field.schema);
    return isIt(means) ? [{ ...field, means }] : [];
  });
}

/** What the published JSON Schema says of the form of a text. */
const formOf = (schema: Schema): { pattern?: string; format?: string } =>
  z.toJSONSchema(schema, { unrepresentable: 'any' });

const namesOf = (fields: readonly SchemaField[]): string[] => [...new Set(fields.map(({ name }) => name))].sort();

/** Pointers of the findings with a code, once a value stands at a field; and where that is. */
function found({ steps }: SchemaField, value: unknown, code: string): { pointer: string; pointers: string[] } {
  const { record, pointer } = withField(VisitRecord, FULL, steps, value);
  const { findings } = assessRecord(record, AT);
  // Whatever a field is called by, the sentence has it.
  for (const { sentence } of findings) expect(sentence).not.toMatch(/\{\d\}|undefined|\[object| {2}|^The {2}| of ,/);
  return { pointer, pointers: findings.filter((finding) => finding.code === code).map((finding) => finding.pointer) };
}

function expectFound(field: SchemaField, value: unknown, code: string): void {
  const { pointer, pointers } = found(field, value, code);
  expect(pointers, field.name).toContain(pointer);
}

describe('an unknown person is found wherever a record names one', () => {
  const people = ofKind('person');
  expect(people.length).toBeGreaterThan(30);
  test.each(people)('$name', (field) => expectFound(field, 'nobody-known', 'PERSON_UNKNOWN'));
});

describe('a person without the authorisation is found wherever one is owed', () => {
  const owed = ofKind('person').filter(({ means }) => means.authority !== undefined);
  const nobody = { id: 'nobody-known', name: 'N. N.', capacity: 'Visitor', authorisation: 'X-1' };

  /** A record in which such a person stands at a field, for work that takes an authorisation. */
  function recordWith({ steps, means }: Field<'person'>, person: object): { record: unknown; pointer: string } {
    const { where = {}, scope } = means.authority ?? {};
    const choices = { ...where, ...(typeof scope === 'object' && { [scope.field]: 'engine' }) };
    const { record, pointer } = withField(VisitRecord, FULL, steps, nobody.id);
    const chosen = Object.entries(choices).reduce(
      (made, [field, value]) => withField(VisitRecord, made, [...steps.slice(0, -1), field], value).record,
      record,
    ) as { people: unknown[] };
    return { record: { ...chosen, people: [...chosen.people, { ...nobody, ...person }] }, pointer };
  }

  test.each(owed)('$name: by scope', (field) => {
    const { record, pointer } = recordWith(field, { scope: [] });
    const { findings } = assessRecord(record, AT);
    const pointers = findings.filter(({ code }) => code === 'AUTHORISATION_OUT_OF_SCOPE').map((found) => found.pointer);
    expect(pointers).toContain(pointer);
  });

  test.each(owed)('$name: by the day', (field) => {
    const { record, pointer } = recordWith(field, { scope: [...SCOPES], validUntil: '2020-01-31' });
    const { findings } = assessRecord(record, AT);
    const pointers = findings.filter(({ code }) => code === 'AUTHORISATION_EXPIRED').map((found) => found.pointer);
    expect(pointers).toContain(pointer);
  });

  test('which is for tasks, their second inspections, weighing, deferrals, extensions, sign-offs, limits that a manual lacks, changes of the standing file and the release', () => {
    expect(namesOf(owed)).toEqual([
      'aircraft/noLateralLimits/by',
      'bulletins/items/#/confirmedBy',
      'carried/#/by',
      'findings/#/deferral/by',
      'inspection/tasks/#/by',
      'inspection/tasks/#/secondInspection/by',
      'release/acknowledgements/#/by',
      'release/by',
      'signOffs/#/by',
      'standing/changed/#/by',
      'weighing/by',
      'weighing/differenceExplained/by',
      'weighing/repeated/by',
    ]);
  });
});

describe('a dangling reference is found', () => {
  const references = ofKind('reference');
  test.each(references.filter(({ means }) => means.code === undefined))('$name', (field) =>
    expectFound(field, 'no-such-entry', 'REFERENCE_UNKNOWN'),
  );

  test.each(references.filter(({ means }) => means.code !== undefined))('$name, by a rule of its own', (field) => {
    const { pointer, pointers } = found(field, 'no-such-entry', field.means.code ?? '');
    // The end of a wire is reported as a whole, with its contact.
    expect([pointer, pointer.replace(/\/at$/, '')].some((at) => pointers.includes(at))).toBe(true);
  });

  test('and only wires and their points may name what a part that is left out would have', () => {
    expect(namesOf(references.filter(({ means }) => means.unlessAbsent !== undefined))).toEqual([
      'wiring/points/#/circuit',
      'wiring/wires/#/circuit',
    ]);
  });

  test('and a name without blanks that refers to nothing in the record is a choice of the rules or a revision', () => {
    const isName = ({ schema }: SchemaField): boolean => formOf(schema).pattern?.startsWith('^[A-Za-z0-9]') ?? false;
    const bare = FIELDS.filter((field) => isName(field) && meaningOf(field.schema) === undefined);
    expect(namesOf(bare)).toEqual([
      'aircraft/regime',
      'baseline/equipmentRevision',
      'release/further/#/statement',
      'release/statement',
    ]);
  });
});

describe('a second entry of the same name is found', () => {
  const isListed = ({ steps }: SchemaField): boolean => {
    const before = steps.slice(0, -1).findLast((step) => typeof step !== 'object' || !('by' in step));
    return typeof before === 'object';
  };
  const listed = ofKind('identifier').filter(isListed);

  test.each(listed.filter(({ means }) => means.repeatable === undefined))('$name', (field) => {
    const once = withField(VisitRecord, FULL, field.steps, 'same-name');
    const list = once.pointer.split('/').slice(1, -2);
    const entries = list.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], once.record) as unknown[];
    entries.push(entries[Number(once.pointer.split('/').at(-2))]);
    const { findings } = assessRecord(once.record, AT);
    const pointer = `/${[...list, entries.length - 1, once.pointer.split('/').at(-1)].join('/')}`;
    expect(findings.filter(({ code }) => code === 'DUPLICATE_ID').map((finding) => finding.pointer)).toContain(pointer);
  });

  test('apart from what INSTALLED_ITEM_ALREADY_LISTED finds', () => {
    expect(namesOf(listed.filter(({ means }) => means.repeatable !== undefined))).toEqual([
      'asFound/#/id',
      'modifications/#/changes/#/id',
    ]);
  });
});

describe('a time', () => {
  const times = ofKind('timestamp');
  expect(times).toHaveLength(46);

  describe('in the future is found', () => {
    test.each(times.filter(({ means }) => means.future === undefined))('$name', (field) =>
      expectFound(field, '2031-01-01T12:00:00+01:00', 'DATE_IN_FUTURE'),
    );

    test('unless it is planned', () => {
      expect(namesOf(times.filter(({ means }) => means.future !== undefined))).toEqual([
        'departure/latestAt',
        'departure/plannedAt',
      ]);
    });
  });

  describe('before the arrival is found', () => {
    test.each(times.filter(({ means }) => means.early === undefined))('$name', (field) =>
      expectFound(field, '1999-01-01T12:00:00+01:00', 'DATES_OUT_OF_ORDER'),
    );

    test('with six exceptions', () => {
      expect(namesOf(times.filter(({ means }) => means.early !== undefined))).toEqual([
        'attachments/#/takenAt',
        'departure/latestAt',
        'departure/plannedAt',
        'findings/#/declined/at',
        'flights/#/from',
        'visit/arrivedAt',
      ]);
    });
  });

  describe('after the end of work is found', () => {
    test.each(times.filter(({ means }) => means.late === undefined))('$name', (field) =>
      expectFound(field, AFTER_WORK, 'DATES_OUT_OF_ORDER'),
    );

    test('with eight exceptions', () => {
      expect(namesOf(times.filter(({ means }) => means.late !== undefined))).toEqual([
        'attachments/#/takenAt',
        'departure/latestAt',
        'departure/plannedAt',
        'findings/#/declined/at',
        'flights/#/from',
        'notRequired/#/at',
        'signOffs/#/at',
        'visit/workEndedAt',
      ]);
    });
  });

  test.each(['findings/#/closedAt', 'findings/#/declined/at'])('%s before the finding itself is found', (name) => {
    const field = times.find((time) => time.name === name);
    if (!field) throw new Error('No such field');
    // The finding was made at 11:10 on the day of the arrival, which was at 09:10.
    expectFound(field, '2026-11-03T10:00:00+01:00', 'DATES_OUT_OF_ORDER');
  });

  test('has a bound that the schema has, or none', () => {
    const names = new Set(namesOf(times));
    const bounds = times.flatMap(({ means: { after, before } }) => [...after, ...before]);
    expect([...new Set(bounds)].sort()).toEqual([
      'finishedAt',
      'foundAt',
      'isolation.at',
      'openedAt',
      'visit.arrivedAt',
      'visit.workEndedAt',
      'weighedAt',
    ]);
    expect(names).toContain('findings/#/foundAt');
    expect(names).toContain('electrical/traction/isolation/at');
  });
});

describe('a day in the future, of something that had happened, is found', () => {
  const days = ofKind('past-date');
  test.each(days)('$name', (field) => expectFound(field, '2031-01-01', field.means.code ?? 'DATE_IN_FUTURE'));

  test('and every other day is a limit', () => {
    const limits = FIELDS.filter(({ schema }) => formOf(schema).format === 'date' && meaningOf(schema) === undefined);
    expect(namesOf(limits)).toEqual([
      'asFound/#/onLoan/until',
      'baseline/equipment/#/onLoan/until',
      'bulletins/items/#/nextDueDate',
      'certificates/#/validUntil',
      'findings/#/deferral/untilDate',
      'findings/#/lookAgain/date',
      'lives/items/#/interval/date',
      'lives/items/#/wasDueAt/date',
      'modifications/#/changes/#/by/onLoan/until',
      'modifications/#/changes/#/in/#/onLoan/until',
      'modifications/#/changes/#/onLoan/until',
      'parts/#/shelfLifeUntil',
      'people/#/validUntil',
      'surveillance/transponderTest/testSet/calibrationDueOn',
      'weighing/scales/#/calibrationDueOn',
    ]);
  });
});

describe('an arm outside the airframe is found', () => {
  const arms = ofKind('arm');
  test.each(arms.filter(({ means }) => means.outside === undefined))('$name', (field) =>
    expectFound(field, 99_999, 'ARM_OUTSIDE_AIRFRAME'),
  );

  test('apart from the extent of the airframe', () => {
    expect(namesOf(arms.filter(({ means }) => means.outside !== undefined))).toEqual([
      'aircraft/airframe/aft',
      'aircraft/airframe/forward',
    ]);
  });

  test('and what is measured in the unit of arms besides is a length, an offset or a lateral arm', () => {
    const others = FIELDS.filter(({ schema }) => quantityOf(schema) === 'arm' && meaningOf(schema)?.kind !== 'arm');
    expect(namesOf(others).filter((name) => !/\/(?:emptyL|l)ateralArm$/.test(name))).toEqual([
      'aircraft/configurations/#/envelopeEquations/aft/#/armChange',
      'aircraft/configurations/#/envelopeEquations/forward/#/armChange',
      'aircraft/envelopeEquations/aft/#/armChange',
      'aircraft/envelopeEquations/forward/#/armChange',
      'aircraft/mac/length',
      'antennas/items/#/groundPlane/minimumRadius',
      'antennas/items/#/minimumSpacing',
      'antennas/items/#/position/right',
      'antennas/items/#/position/up',
      'baseline/emptyArmLimit',
      'baseline/schedules/#/emptyArmLimit',
      'weighing/cgHeight',
      'weighing/distances/#/distance',
      'weighing/distances/#/limit',
      'weighing/hangTests/#/addedAftOfBolt',
      'weighing/hangTests/#/addedBelowBolt',
      'weighing/points/#/armLimit',
      'weighing/points/#/lateralArmLimit',
      'wiring/nearControls/#/distance',
    ]);
  });
});

describe('a character that cannot be printed is found in every text', () => {
  const texts = FIELDS.filter(({ schema }) => {
    const means = meaningOf(schema);
    return means?.kind === 'text' || (means?.kind === 'identifier' && means.isText);
  });
  expect(texts.length).toBeGreaterThan(150);
  test.each(texts)('$name', (field) => expectFound(field, '\u6f22', 'TEXT_UNPRINTABLE'));
});
