import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { harmless, outputFor } from '../../../worker/local/command/output.ts';
import { ROOT } from '../../../worker/local/service/places.ts';
import { type Outcome, runCommand } from './run-command.ts';

const folder = mkdtempSync(join(tmpdir(), 'slipmark-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// Clears the screen, sets its title, rings, deletes, is a C1 introducer, turns text round, isolates it, and begins a line of its own.
const NASTY = '\u001b[2J\u001b]0;t\u0007\u007f\u009b31m\u202egnp.\u2066x\u2069\r\nReleased: Q-EVL';
// What a terminal obeys; lines are ended by the command itself.
const OBEYED = /(?!\n)[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/u;

function expectHarmless({ stdout, stderr }: Outcome): void {
  expect(stdout).not.toMatch(OBEYED);
  expect(stderr).not.toMatch(OBEYED);
  expect(`${stdout}\n${stderr}`).not.toMatch(/^\s*Released: Q-EVL/m);
}

function written(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** A record whose workshop, aircraft and people have nasty names, and which has a field that nobody knows. */
function nastyRecord(more: Record<string, unknown> = {}): string {
  const record = JSON.parse(readFileSync(join(ROOT, 'fixtures/visits/weighing-only.json'), 'utf8'));
  const nasty = NASTY.replace(/\r\n/, ' ');
  record.workshop.name = nasty;
  record.aircraft.maker = nasty;
  for (const person of record.people) person.name = nasty;
  return JSON.stringify({ ...record, ...more });
}

describe('harmless()', () => {
  test('shows each control and each turn of direction by its code point', () => {
    expect(harmless('\0\t\n\u001b\u007f\u0080\u009f')).toBe('U+0000U+0009U+000AU+001BU+007FU+0080U+009F');
    expect(harmless('\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069')).toBe(
      'U+202AU+202BU+202CU+202DU+202EU+2066U+2067U+2068U+2069',
    );
  });

  test('leaves what is read', () => {
    const text = 'Müßig, 1 400 kg ± 2 “ok” — 漢字 \u{1F6E9}';
    expect(harmless(text)).toBe(text);
  });
});

describe('outputFor() gives a file to standard output', () => {
  const table = 'name\tmass\r\nRadio\u001b[2J\u202e\t1\n';
  const given = (isTerminal: boolean): string => {
    const before = process.stdout.isTTY;
    const write = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
    process.stdout.isTTY = isTerminal;
    outputFor({ isJson: false, hasProgress: false }).file(table);
    process.stdout.isTTY = before;
    const text = String(write.mock.calls[0]?.[0]);
    write.mockRestore();
    return text;
  };

  test('as it is, where it goes into a file or a program', () => {
    expect(given(false)).toBe(table);
  });

  test('laid out and harmless, where it goes to a terminal', () => {
    expect(given(true)).toBe('name\tmass\r\nRadioU+001B[2JU+202E\t1\n');
  });
});

describe('a command says nothing that a terminal obeys', () => {
  const drafted = ['--out', join(folder, 'out'), '--draft'];
  test.each<[string, () => string[]]>([
    ['of a record that it assesses', () => ['assess', written('assessed.json', nastyRecord())]],
    ['of a draft', () => ['pack', written('drafted.json', nastyRecord()), ...drafted]],
    ['of a field that is not known', () => ['assess', written('unknown.json', nastyRecord({ [NASTY]: NASTY }))]],
    [
      'of a key that is given twice',
      () => ['assess', written('twice.json', `{${`${JSON.stringify(NASTY)}:1,`.repeat(2)}"a":1}`)],
    ],
    ['of the name of a file', () => ['assess', join(folder, NASTY.replaceAll('/', ''))]],
    ['of a file that is no JSON', () => ['assess', written(`no json ${NASTY.replaceAll('/', '')}`, '[')]],
    ['of an option', () => ['assess', `--${NASTY}`]],
    ['of a command', () => [NASTY]],
    ['of a sheet', () => ['csv', 'template', NASTY]],
    ['of a table', () => ['csv', 'to-record', 'equipment', written('t.csv', `${NASTY},${NASTY}\n${NASTY},1\n`)]],
  ])('%s', async (_, args) => {
    expectHarmless(await runCommand(args()));
  });

  test('as JSON, where it means the same', async () => {
    const file = written('unknown.json', nastyRecord({ [NASTY]: 1 }));
    const outcome = await runCommand(['assess', file, '--json']);
    expectHarmless(outcome);
    const { findings } = JSON.parse(outcome.stdout) as { findings: { pointer: string }[] };
    expect(findings.map(({ pointer }) => pointer)).toContain(`/${NASTY}`);
  });

  test('of what a service answers', async () => {
    const problem = { title: NASTY, detail: NASTY, findings: [{ sentence: NASTY }], type: NASTY };
    const service = createServer((_, response) => {
      response.writeHead(500, { 'Content-Type': 'application/problem+json' }).end(JSON.stringify(problem));
    });
    await new Promise<void>((resolve) => service.listen(0, '127.0.0.1', resolve));
    const origin = `http://127.0.0.1:${(service.address() as AddressInfo).port}`;
    const outcome = await runCommand(['keys', 'list', '--origin', origin, '--key', 'k']);
    service.close();
    expectHarmless(outcome);
    expect(outcome.stderr).toContain('U+001B[2J');
  });

  test('but a table that goes into a file is as it was recorded', async () => {
    const record = JSON.parse(readFileSync(join(ROOT, 'fixtures/visits/weighing-only.json'), 'utf8'));
    record.baseline = { ...record.baseline, equipment: [{ id: 'E1', name: 'Radio\u007f' }] };
    const out = join(folder, 'table.csv');
    const outcome = await runCommand([
      'csv',
      'from-record',
      'equipment',
      written('e.json', JSON.stringify(record)),
      '--out',
      out,
    ]);
    expectHarmless(outcome);
    expect(readFileSync(out, 'utf8')).toContain('\u007f');
  });
});
