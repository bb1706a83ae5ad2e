import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import {
  type CsvForm,
  csvFromItems,
  csvFromLedger,
  csvTemplate,
  type Item,
  intoRecord,
  itemsFromCsv,
  itemsIn,
  SHEETS,
  type SheetName,
} from '../../../worker/local/tables/csv.ts';
import { RUNS } from '../../property-runs.ts';
import { readFixture } from '../../read-fixture.ts';
import { fitting } from '../../schema-arbitrary.ts';

const UNITS = { mass: 'kg', arm: 'mm' } as const;
const NAMES = Object.keys(SHEETS) as SheetName[];
const FORMS: CsvForm[] = ['commas', 'semicolons'];

/** The items of a table that must have no findings. */
function read(name: SheetName, text: string): Item[] {
  const outcome = itemsFromCsv(name, text);
  if (outcome.ok) return outcome.items;
  throw new Error(JSON.stringify(outcome.findings, null, 1));
}

/** Items that fit the schema, without what a table does not tell from nothing: empty lists, and zero with a minus. */
function anyItems(name: SheetName): fc.Arbitrary<Item[]> {
  const { items } = z.toJSONSchema(SHEETS[name].list, { reused: 'inline' });
  return fc
    .array(fitting(items as Record<string, unknown>), { minLength: 1, maxLength: 6 })
    .map((list) => JSON.parse(JSON.stringify(list, (_key, value) => (isEmptyList(value) ? undefined : value))));
}

const isEmptyList = (value: unknown): boolean => Array.isArray(value) && value.length === 0;

/** Everything wrong with a table, as `CODE row column`. */
function wrong(name: SheetName, text: string, units = {}): string[] {
  const outcome = itemsFromCsv(name, text, units);
  return outcome.ok ? [] : outcome.findings.map(({ code, row, column }) => `${code} ${row} ${column}`.trim());
}

const JOBS = 'id,text,state,by,minutesLeft,after\r\n';

describe('there and back', () => {
  test.each(NAMES.flatMap((name) => FORMS.map((form) => [name, form] as const)))('%s with %s', (name, form) => {
    fc.assert(
      fc.property(anyItems(name), (items) => {
        expect(read(name, csvFromItems(name, items, UNITS, form))).toEqual(items);
      }),
      RUNS,
    );
  });

  test.each(NAMES)('the %s of the full fixture', (name) => {
    const record = readFixture('visits/nose-wheel-full');
    const items = itemsIn(name, record);
    expect(items.length).toBeGreaterThan(2);
    for (const form of FORMS)
      expect(intoRecord(name, record, read(name, csvFromItems(name, items, UNITS, form)))).toEqual(record);
  });

  // Scales and points cannot be none.
  test.each(['equipment', 'worksheet'] as const)(
    'an empty table of %s into a record without that part changes nothing',
    (name) => {
      const { [SHEETS[name].place[0] ?? '']: _, ...without } = readFixture('visits/nose-wheel-full') as Item;
      const empty = csvFromItems(name, [], UNITS);
      expect(intoRecord(name, without, read(name, empty))).toEqual(without);
    },
  );

  test.each(NAMES)('the template of %s is a table that can be read', (name) => {
    expect(read(name, csvTemplate(name, UNITS))).toHaveLength(1);
    expect(read(name, csvTemplate(name, UNITS, 'semicolons'))).toEqual(read(name, csvTemplate(name, UNITS)));
  });
});

describe('what spreadsheets write', () => {
  const lines = ['id;name;mass (kg);arm (mm)', 'E1;"Radio; with tray";1,25;1620', 'E2;Torch;0,4;-12,5', ''];

  test('semicolons, decimal commas, a mark of encoding, any end of line, empty lines', () => {
    const expected = [
      { id: 'E1', name: 'Radio; with tray', mass: 1.25, arm: 1620 },
      { id: 'E2', name: 'Torch', mass: 0.4, arm: -12.5 },
    ];
    for (const end of ['\n', '\r\n', '\r'])
      expect(read('equipment', `\uFEFF${[...lines, ';;;', ''].join(end)}`)).toEqual(expected);
    expect(read('equipment', lines.join('\n').replaceAll(';', '\t').replace('\t with', '; with'))).toEqual(expected);
  });

  test('heads in any case, yes and no, spaces around what is chosen', () => {
    const text = 'ID,Name,MASS,Arm,massSource,Required\nE1,Radio,1.2,1620, maker ,YES\nE2,Torch,1,2,,no';
    expect(read('equipment', text)).toEqual([
      { id: 'E1', name: 'Radio', mass: 1.2, arm: 1620, massSource: 'maker', required: true },
      { id: 'E2', name: 'Torch', mass: 1, arm: 2, required: false },
    ]);
  });

  test('a mark that may part decimals or thousands is asked about, never guessed', () => {
    const unclear = 'CSV_NUMBER_UNCLEAR 2 arm';
    expect(wrong('equipment', 'id;name;mass;arm\nE1;Radio;1;1.982')).toEqual([unclear]);
    expect(wrong('equipment', 'id;name;mass;arm\nE1;Radio;1,5;1.982')).toEqual([unclear]);
    expect(wrong('equipment', 'id,name,mass,arm\nE1,Radio,1,"1,982"')).toEqual([unclear]);
    expect(wrong('equipment', 'id\tname\tmass\tarm\nE1\tRadio\t1\t1,982')).toEqual([unclear]);
    expect(wrong('equipment', 'id\tname\tmass\tarm\nE1\tRadio\t1.5\t1,982')).toEqual([unclear]);
    expect(read('equipment', 'id\tname\tmass\tarm\nE1\tRadio\t0,5\t1,982')[0]).toMatchObject({ arm: 1.982 });
    expect(read('equipment', 'id;name;mass;arm\nE1;Radio;1;1,982')[0]).toMatchObject({ arm: 1.982 });
    expect(read('equipment', 'id;name;mass;arm\nE1;Radio;1.5;1.982')[0]).toMatchObject({ mass: 1.5, arm: 1.982 });
  });
});

describe('findings', () => {
  test('all at once, each with row, column, place and what to do', () => {
    const text = `${JOBS}W1,Look over,doing,,0,\nW2,,done,,ten,W1 W/2\n`;
    expect(wrong('worksheet', text)).toEqual([
      'RECORD_VALUE_WRONG 2 state',
      'RECORD_FIELD_MISSING 3 text',
      'RECORD_TYPE_WRONG 3 minutesLeft',
      'RECORD_VALUE_WRONG 3 after',
    ]);
    const outcome = itemsFromCsv('worksheet', text);
    expect(outcome.ok ? undefined : outcome.findings[0]).toMatchObject({
      pointer: '/worksheet/0/state',
      sentence:
        'Cannot read the table: row 2, state: Status (/worksheet/0/state) must be one of "done", "in-hand", "waiting", "declined": current value is "doing"',
    });
  });

  test('columns that are unknown, missing, twice, or in another unit', () => {
    const text = 'id,nam,id,mass (lb),arm\nE1,Radio,E1,1,2';
    expect(wrong('equipment', text, UNITS)).toEqual([
      'CSV_COLUMN_UNKNOWN 1 nam',
      'CSV_COLUMN_TWICE 1 id',
      'CSV_UNIT_DIFFERS 1 mass (lb)',
      'CSV_COLUMN_MISSING 1 name',
    ]);
    const outcome = itemsFromCsv('equipment', text, UNITS);
    expect(outcome.ok ? '' : outcome.findings[0]?.remedy).toBe('Write name, or remove it');
  });

  test('units that differ within one table', () => {
    expect(wrong('equipment', 'id,name,mass (kg),massLimit (lb),arm\nE1,Radio,1,2,3')).toEqual([
      'CSV_UNIT_DIFFERS 1 massLimit (lb)',
    ]);
  });

  test('a run that was left out is no run fewer', () => {
    const text = csvTemplate('points', UNITS).replace('131.6,131.6,131.6', '131.6,,131.6');
    expect(wrong('points', text)).toEqual(['RECORD_FIELD_MISSING 2 readings 2 (kg)']);
    expect(wrong('points', csvTemplate('points', UNITS).replace('131.6,131.6,131.6', ',,'))).toEqual([
      'RECORD_FIELD_MISSING 2 readings 1 (kg)',
    ]);
    const without = csvTemplate('points', UNITS).replaceAll(/,readings.*|,131.*/g, '');
    expect(wrong('points', without)).toEqual(['CSV_COLUMN_MISSING 1 readings 1']);
  });

  test('more cells than heads, and quotation marks that do not match', () => {
    expect(wrong('worksheet', `${JOBS}W1,Look over, and read,done,,0,W2`)).toContain('CSV_CELLS_TOO_MANY 2');
    expect(wrong('worksheet', `${JOBS}W1,"Look over,done,,0,`)).toEqual(['CSV_QUOTE_WRONG 2']);
  });

  test('a number of repetition beyond measure is no column', () => {
    const text = csvTemplate('points', UNITS).replace('readings 3', 'readings 4000000000');
    expect(wrong('points', text)).toEqual(['CSV_COLUMN_UNKNOWN 1 readings 4000000000 (kg)']);
    expect(wrong('points', text.replace('4000000000', '0'))).toEqual(['CSV_COLUMN_UNKNOWN 1 readings 0 (kg)']);
  });

  test('any text has items or findings, and nothing is thrown', () => {
    const pieces = fc.constantFrom(
      ...',;\t\n"=\u0027',
      'id',
      'text',
      'state',
      '__proto__',
      'after',
      '(kg)',
      '1,5',
      '\u0000',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(pieces, fc.string())), fc.constantFrom(...NAMES), (text, name) => {
        const outcome = itemsFromCsv(name, text.join(''));
        expect(outcome.ok ? outcome.items : outcome.findings.length).toBeTruthy();
      }),
      RUNS,
    );
  });

  test('an empty file lacks every column that is needed', () => {
    expect(wrong('worksheet', '')).toEqual(['id', 'text', 'state'].map((name) => `CSV_COLUMN_MISSING 1 ${name}`));
  });
});

describe('formulas', () => {
  const texts = ['=1+1', '+1', '-1', '@SUM(A1)', '\tx', "'=1", "''=1", "'plain"];
  const jobs = texts.map((text, index) => ({ id: `W${index}`, text, state: 'done' }));

  test('no cell of text begins as a formula does, and each comes back as it was', () => {
    for (const form of FORMS) {
      const text = csvFromItems('worksheet', jobs, UNITS, form);
      expect(text).not.toMatch(/[,;\n]"?[=+\-@\t]/);
      expect(read('worksheet', text)).toEqual(jobs);
    }
  });

  test('neither in a ledger, whose entries are otherwise as they are', () => {
    const entry = { seq: 1, at: '2026-11-05T12:00:00Z', kind: 'visit-kept', previous: '00', digest: 'ff' };
    const text = csvFromLedger([
      { ...entry, body: '{"visit":"v1"}' },
      { ...entry, body: '=cmd()' },
    ]);
    expect(text).toBe(
      'seq,at,kind,body,previous,digest\r\n1,2026-11-05T12:00:00Z,visit-kept,"{""visit"":""v1""}",00,ff\r\n1,2026-11-05T12:00:00Z,visit-kept,\'=cmd(),00,ff\r\n',
    );
  });
});
