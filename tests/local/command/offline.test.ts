import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readRecord } from '../../../worker/core/record/read-record.ts';
import { countLine } from '../../../worker/local/command/findings.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { RELEASABLE_AT } from '../../core/gate/assess-record.ts';
import { pageTexts } from '../../core/print/read-back.ts';
import { readFixture } from '../../read-fixture.ts';
import { runCommand } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'slipmark-'));
const FULL = join(ROOT, 'fixtures/visits/nose-wheel-full.json');
const WEIGHING = join(ROOT, 'fixtures/visits/weighing-only.json');
const AT = ['--at', RELEASABLE_AT['nose-wheel-full'] ?? ''];
const ATTACHMENTS = ['--attachments', join(ROOT, 'fixtures/attachments')];

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Writes a file for a command to read. */
function written(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** What stands where a finding says that it is. */
function atPlace(text: string, { line, column }: { line: number; column: number }): string {
  return text.split('\n')[line - 1]?.slice(column - 1) ?? '';
}

describe('slipmark', () => {
  test('lists its commands, and names the one that may be meant', async () => {
    expect(await runCommand(['--help'])).toMatchObject({ code: 0, stdout: expect.stringContaining('Usage: slipmark') });
    expect(await runCommand([])).toMatchObject({ code: 2 });
    const meant = await runCommand(['asess']);
    expect(meant).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('Unknown command asess. Did you mean assess?'),
    });
    const help = await runCommand(['pack', '--help']);
    expect(help).toMatchObject({ code: 0, stdout: expect.stringContaining('--attachments DIR') });
  });

  test('has summaries of up to 60 characters that begin with a verb', async () => {
    const { stdout } = await runCommand(['--help']);
    const summaries = [...stdout.matchAll(/^ {2}\w+ +(.+)$/gm)].map(([, summary = '']) => summary);
    expect(summaries.length).toBeGreaterThan(10);
    expect(summaries.filter((summary) => summary.length > 60 || !/^[A-Z][a-z]+,? /.test(summary))).toEqual([]);
  });

  test.each([
    [['assess', 'a.json', '--attachment', 'x'], 'Unknown option --attachment. Did you mean --attachments?'],
    [['assess', 'a.json', '--at'], '--at needs a value: TIME'],
    [['assess', 'a.json', '--at', '--json'], '--at needs a value: TIME'],
    [['assess', 'a.json', '--json=yes'], '--json takes no value, but has yes'],
    [['assess', 'a.json', '--at', 'noon'], '--at must be a time such as 2026-11-05T15:00:00Z, not noon'],
    [['assess', 'a.json', 'b.json'], 'Unexpected argument: b.json'],
    [['assess'], 'Missing argument: record'],
    [['pack', 'a.json', '--paper', 'A5'], '--paper must be A4 or Letter, not A5'],
    [['post', 'a.json'], 'a.json: no such file'],
    [['example', 'weighing'], 'Unknown sample weighing. Samples: '],
    [['csv', 'template', 'equipmnt'], 'Did you mean equipment?'],
    [['export', '--out', 'x', '--key', 'k', '--origin', 'nowhere'], '--origin must be a URL'],
    [['export', '--out', 'x'], 'Key missing'],
  ])('%j is not understood, and why', async (args, why) => {
    const { code, stderr } = await runCommand(args);
    expect(stderr).toContain(why);
    expect([1, 2]).toContain(code);
  });

  test('writes a record to begin from, which is releasable today, and never over a file', async () => {
    const file = join(folder, 'begun.json');
    const args = ['example', 'weighing-only', '--registration', 'Q-OWN', '--out', file];
    expect(await runCommand(args)).toMatchObject({ code: 0 });
    expect(await runCommand(['assess', file])).toMatchObject({ code: 0 });
    expect(JSON.parse(readFileSync(file, 'utf8')).aircraft.registration).toBe('Q-OWN');
    expect(await runCommand(args)).toMatchObject({ code: 2, stderr: expect.stringContaining('it exists already') });
  });

  test('says so where Node is too old to run it', async () => {
    const older = "Object.defineProperty(process,'versions',{value:{...process.versions,node:'20.1.0'}})";
    const { code, stderr } = await runCommand(['assess'], { node: ['--import', `data:text/javascript,${older}`] });
    expect(code).toBe(2);
    expect(stderr).toContain('Slipmark needs Node 22.18 or later');
  });
});

describe('slipmark assess', () => {
  test('answers 0 for a record that can be released, with everything computed', async () => {
    const { code, stdout } = await runCommand(['assess', FULL, ...ATTACHMENTS, ...AT, '--json']);
    expect(code).toBe(0);
    const answer = JSON.parse(stdout);
    expect(answer).toMatchObject({ isReleasable: true, results: { schedule: { basis: 'weighed' } } });
    for (const finding of answer.findings) {
      const field = finding.pointer.split('/').at(-1);
      if (!/^\d+$/.test(field)) expect(atPlace(readFileSync(FULL, 'utf8'), finding), finding.pointer).toMatch(/^["{[]/);
    }
  });

  test('answers 1 for what stands against it, each with pointer and place in the file', async () => {
    const { code, stdout } = await runCommand(['assess', FULL, ...AT]);
    expect(code).toBe(1);
    const [, pointer, line, column] = /ATTACHMENT_\w+ {2}(\S+) {2}.*:(\d+):(\d+)\n/.exec(stdout) ?? [];
    expect(pointer).toMatch(/^\/attachments\/0/);
    const place = { line: Number(line), column: Number(column) };
    expect(atPlace(readFileSync(FULL, 'utf8'), place)).toMatch(/^["{]/);
    expect(stdout).toMatch(/\d+ findings? blocks? the release/);
  });

  test('answers 2 for a folder of files that is not there, and passes over folders within one', async () => {
    expect(await runCommand(['assess', FULL, '--attachments', join(ROOT, 'no-such-folder')])).toMatchObject({
      code: 2,
      stderr: expect.stringContaining('there is no such folder'),
    });
    const { code, stderr } = await runCommand(['assess', FULL, '--attachments', join(ROOT, 'fixtures'), ...AT]);
    expect(stderr).not.toContain('EISDIR');
    expect(code).toBe(1);
  });

  test('answers 2 for a record that does not fit, from standard input too', async () => {
    const record = { ...(readFixture('visits/weighing-only') as object), colour: 'red' };
    const text = JSON.stringify(record, null, 2);
    const { code, stdout } = await runCommand(['assess', '-', '--json'], { input: text });
    expect(code).toBe(2);
    const { isReadable, findings } = JSON.parse(stdout);
    expect(isReadable).toBe(false);
    expect(findings).toMatchObject([{ code: 'RECORD_KEY_UNKNOWN', pointer: '/colour' }]);
    expect(atPlace(text, findings[0])).toMatch(/^"colour": "red"/);
  });

  test('answers 2 for what is no JSON, and for keys given twice, with the place', async () => {
    const broken = written('broken.json', '{\n  "units" {}\n}');
    const { code, stderr } = await runCommand(['assess', broken]);
    expect(code).toBe(2);
    expect(stderr).toContain(`${broken}:2:11: not valid JSON`);
    const twice = await runCommand(['assess', written('twice.json', '{"a": 1, "a": 2}'), '--json']);
    expect(twice.code).toBe(2);
    expect(JSON.parse(twice.stdout).findings).toMatchObject([{ code: 'JSON_KEY_TWICE', pointer: '/a' }]);
  });
});

describe('slipmark example', () => {
  test('gives other marks to the aircraft and to its devices, and passes its own rules', async () => {
    const file = join(folder, 'own.json');
    expect((await runCommand(['example', 'nose-wheel-full', '--registration', 'q-own', '--out', file])).code).toBe(0);
    const text = readFileSync(file, 'utf8');
    expect(text).toContain('"registration": "Q-OWN"');
    expect(text).not.toMatch(/Q-?SLM/);
    const { code, stdout } = await runCommand(['assess', file, ...ATTACHMENTS]);
    expect([code, stdout]).toEqual([0, expect.stringContaining('Nothing in this record blocks the release')]);
  });
});

describe('slipmark pack', () => {
  test('writes a draft that nobody has released, and lists the findings', async () => {
    const out = join(folder, 'out');
    const weighing = written('weighing.json', JSON.stringify(readFixture('visits/weighing-only')));
    const at = ['--at', RELEASABLE_AT['weighing-only'] ?? ''];
    const { code, stdout } = await runCommand(['pack', weighing, '--out', out, ...at, '--json', '--progress']);
    expect(code).toBe(0);
    const { files, isReleasable } = JSON.parse(stdout) as { files: string[]; isReleasable: boolean };
    expect(isReleasable).toBe(true);
    expect(files.map((file) => file.replace(`${out}/`, ''))).toEqual(['Q-WGT-not-released.pdf', 'Q-WGT-record.json']);
    const pages = await pageTexts(new Uint8Array(readFileSync(files[0] ?? '')));
    expect(pages.length).toBeGreaterThan(5);
    for (const page of pages) {
      expect(page).toContain('NOT RELEASED');
      expect(page).not.toContain('Released by');
    }
    const blocked = await runCommand(['pack', FULL, '--out', out, ...AT]);
    expect(blocked).toMatchObject({ code: 1, stdout: expect.stringContaining('blocks  ') });
    expect(blocked.stdout).toContain(join(out, 'Q-SLM-not-released.pdf'));
    const draft = await runCommand(['pack', weighing, '--out', out, ...at, '--draft', '--paper', 'Letter']);
    expect(draft).toMatchObject({ code: 0, stdout: expect.stringContaining('Q-WGT-not-released.pdf') });
  });
});

describe('the summary line', () => {
  const finding = (severity: string, acknowledgedBy?: string) =>
    ({ code: 'A', severity, pointer: '', sentence: '', remedy: '', acknowledgedBy }) as const;

  test.each([
    [[], 'Nothing blocks the release; accepted cautions: 0, notes: 0'],
    [[finding('caution', 'jonas'), finding('note')], 'Nothing blocks the release; accepted cautions: 1, notes: 1'],
    [[finding('caution')], '1 caution waits for a decision; accepted cautions: 0, notes: 0'],
    [
      [finding('blocks'), finding('blocks'), finding('caution'), finding('caution', 'jonas')],
      '2 findings block the release; 1 caution waits for a decision; accepted cautions: 1, notes: 0',
    ],
  ])('of %j', (findings, line) => expect(countLine(findings)).toBe(line));

  test('names what was not checked without an archive', () => {
    expect(countLine([], true)).toMatch(/^Nothing in this record blocks the release/);
    expect(countLine([finding('blocks')], true)).toBe(countLine([finding('blocks')]));
  });
});

describe('slipmark csv', () => {
  test('brings a list out of a record and back, unchanged', async () => {
    const table = join(folder, 'equipment.csv');
    const back = join(folder, 'back.json');
    for (const form of [[], ['--semicolons']]) {
      expect((await runCommand(['csv', 'from-record', 'equipment', FULL, '--out', table, ...form])).code).toBe(0);
      expect((await runCommand(['csv', 'to-record', 'equipment', table, '--into', FULL, '--out', back])).code).toBe(0);
      expect(JSON.parse(readFileSync(back, 'utf8'))).toEqual(JSON.parse(readFileSync(FULL, 'utf8')));
    }
  });

  test('brings an empty list into a record that has no such part, which still reads', async () => {
    const table = written('empty.csv', 'id,name,mass (lb),arm (in)\n');
    const { code, stdout } = await runCommand(['csv', 'to-record', 'equipment', table, '--into', WEIGHING]);
    expect(code).toBe(0);
    expect(readRecord(JSON.parse(stdout)).ok).toBe(true);
  });

  test('answers 1 for a table with findings, and writes nothing', async () => {
    const table = written('bad.csv', 'id,name,mass (lb),arm\nE1,Radio,heavy,2');
    const { code, stdout } = await runCommand(['csv', 'to-record', 'equipment', table, '--into', FULL]);
    expect(code).toBe(1);
    expect(stdout).toContain(`CSV_UNIT_DIFFERS  ${table}, row 1, mass (lb)`);
    expect(stdout).toContain(`RECORD_TYPE_WRONG  ${table}, row 2, mass (lb)`);
    expect(stdout).not.toContain('schemaVersion');
  });

  test('gives templates, and refuses a file of another code page', async () => {
    const { stdout } = await runCommand(['csv', 'template', 'worksheet']);
    expect(stdout).toMatch(/^id,text,state,by,minutesLeft,after\r\nW03,/);
    writeFileSync(join(folder, 'latin.csv'), Buffer.from('id,text,state\nW1,Öl,done', 'latin1'));
    const { code, stderr } = await runCommand(['csv', 'to-record', 'worksheet', join(folder, 'latin.csv')]);
    expect(code).toBe(2);
    expect(stderr).toContain('not UTF-8');
  });

  test('writes the chain of an aircraft', async () => {
    const entries = [{ seq: 1, at: '2026-11-05', kind: 'visit-kept', body: '{}', previous: '0', digest: 'f' }];
    const ledger = written('ledger.json', JSON.stringify({ entries }));
    const { stdout } = await runCommand(['csv', 'from-record', 'ledger', ledger]);
    expect(stdout).toBe('seq,at,kind,body,previous,digest\r\n1,2026-11-05,visit-kept,{},0,f\r\n');
  });
});
