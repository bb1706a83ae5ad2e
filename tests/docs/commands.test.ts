import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import Ajv from 'ajv';
import { parse } from 'jsonc-parser';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentPath } from '../../site/build/prose.ts';
import { verifyFile } from '../../worker/core/seal/verify.ts';
import { ROOT, WORKER } from '../../worker/local/service/places.ts';
import { CONTENT_PAGES, fencedBlocks, languagesOf } from './fenced-blocks.ts';
import { beginReading, type Reader } from './reader.ts';

const SLIPMARK = join(WORKER, 'local/slipmark.js');

let reader: Reader;

beforeAll(async () => {
  reader = await beginReading();
}, 60_000);

afterAll(() => reader?.leave());

const isPdf = (name: string): boolean => readFileSync(join(reader.folder, name)).subarray(0, 5).toString() === '%PDF-';

describe('the commands of the documentation', { timeout: 60_000 }, () => {
  test('start: a record is kept and assessed, and its draft is a PDF', async () => {
    const output = await reader.runShell('start');
    expect(output).toContain('"recordSha256"');
    expect(output).toContain('"findings"');
    expect(isPdf('draft.pdf')).toBe(true);
  });

  test('guide: from the first record to a link that opens', async () => {
    const output = await reader.runShell('guide');
    expect(output).toContain('WEIGHED_OUTDOORS');
    expect(isPdf('Q-WGT-P1-1.pdf')).toBe(true);
    expect(output).toContain('"verdict": "genuine"');
    // What the first pack left open is due by its name, stops the next visit, is answered for, and is due no more.
    expect(output).toContain('"openItem": "Q-WGT-P1/limitation-1"');
    expect(output).toContain('OPEN_ITEM_UNANSWERED');
    expect(output.slice(output.lastIndexOf('"withdrawn"'))).toContain('"limitations": []');
    const keys = JSON.parse(readFileSync(join(reader.folder, 'keys.json'), 'utf8'));
    const verdict = await verifyFile(new Uint8Array(readFileSync(join(reader.folder, 'Q-WGT-P1-1.pdf'))), keys);
    expect(verdict.kind).toBe('genuine');
    const link = /"url": *"([^"]+)"/.exec(output)?.[1] ?? '';
    const page = await fetch(link);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('Q-WGT');
  });

  test('bench: the record that stands there is computed', async () => {
    cpSync(join(reader.folder, 'fixtures/visits/weighing-only.json'), join(reader.folder, 'record.json'));
    expect(await reader.runShell('bench-curl')).toContain('"massKg"');
  });

  test('tools: the settings name a schema that is there', () => {
    const settings = JSON.parse(fencedBlocks('tools', 'json').join('')) as { 'json.schemas': { url: string }[] };
    for (const { url } of settings['json.schemas']) expect(existsSync(join(ROOT, url))).toBe(true);
  });

  test('deploy: wrangler knows every setting', () => {
    const schema = JSON.parse(readFileSync(join(ROOT, 'node_modules/wrangler/config-schema.json'), 'utf8'));
    const isKnown = new Ajv({ strict: false, validateFormats: false }).compile(schema);
    const own = parse(readFileSync(join(ROOT, 'worker/wrangler.jsonc'), 'utf8'));
    expect(isKnown({ ...own, ...JSON.parse(fencedBlocks('deploy', 'json').join('')) })).toBe(true);
    expect(isKnown({ ...own, routes: [{ patern: 'packs.example.org' }] })).toBe(false);
  });

  test('deploy: wrangler knows every command, and the workshop is made', async () => {
    const output = await reader.runShell('deploy');
    expect(output).toContain('Scale head');
    expect(output).toMatch(/"items": \[\s*\{\s*"id": "rufus"/);
    expect(readFileSync(join(reader.folder, 'seal-keys.json'), 'utf8')).toContain('"keys": []');
  });

  test('moving-house: what was released is exported, proved, imported, repaired, and exported again the same', async () => {
    const output = await reader.runShell('moving-house');
    expect(output).toContain('GENUINE: every pack of reader');
    expect(output).toContain('Q-WGT: 2 packs imported');
    expect(output).toContain('Read 10 files of 1 aircraft');
    expect(output).toContain('Q-WGT: 2 packs already there');
    expect(output).toContain('"state": "whole"');
    const headers = { 'Content-Type': 'application/json' };
    const digest = createHash('sha256')
      .update(readFileSync(join(reader.folder, 'Q-WGT-P1-1.pdf')))
      .digest('hex');
    const body = JSON.stringify({ pdfSha256: digest });
    const answer = await fetch(`${reader.newOrigin}/v1/verifications`, { method: 'POST', headers, body });
    expect(await answer.json()).toMatchObject({ supersededBy: 'Q-WGT-P2-1', workshop: 'reader' });
  });

  test('tools: every command is named, there and in the README', async () => {
    const { stdout } = await promisify(execFile)(process.execPath, [SLIPMARK, '--help']);
    const commands = [...stdout.matchAll(/^ {2}(\w+) /gm)].map(([, name = '']) => name);
    expect(commands).toContain('scrub');
    const [table = '', readme = ''] = [contentPath('tools'), join(ROOT, 'README.md')].map((file) =>
      readFileSync(file, 'utf8'),
    );
    expect(commands.filter((name) => !new RegExp(`^\\| .*\`${name}\\b`, 'm').test(table))).toEqual([]);
    expect(commands.filter((name) => !new RegExp(`slipmark ${name}\\b|\`${name}\``).test(readme))).toEqual([]);
  });

  test('tools: the command assesses and posts, tables go both ways, the client amends', async () => {
    const output = await reader.runShell('tools');
    expect(output.match(/Nothing (?:in this record )?blocks the release/g)).toHaveLength(3);
    expect(readFileSync(join(reader.folder, 'points.csv'), 'utf8')).toContain('readings 1 (lb)');
    expect(JSON.parse(readFileSync(join(reader.folder, 'equipment.json'), 'utf8'))).toMatchObject([
      { id: 'E14', mass: 1.2 },
    ]);
    const [given, amended] = ['fixtures/visits/weighing-only.json', 'amended.json'];
    expect(JSON.parse(readFileSync(join(reader.folder, amended), 'utf8'))).toEqual(
      JSON.parse(readFileSync(join(reader.folder, given), 'utf8')),
    );
    expect(output).toMatch(/^Q-WGT-P1-1 \d{4}-/m);
    expect(output).toContain('true 1\n412 /problems/precondition-failed 0');
  });

  test('typescript: a caution answered for, a pack released and saved', async () => {
    expect(await reader.runTypeScript('typescript')).toMatch(
      /^Q-WGT-P\d+-1 WEIGHED_OUTDOORS NOTHING_TO_COMPARE http:\S+\/p\/\S+$/m,
    );
  });

  test('python: a photograph handed in, a pack released and saved', async () => {
    const [, pack = ''] = /^(Q-WGT-P\d+-1) \d+\.\d+$/m.exec(await reader.runPython('python')) ?? [];
    expect(isPdf(`${pack}.pdf`)).toBe(true);
  });

  test('no block of any page was left out', () => {
    const apart = new Set(['tools json', 'deploy json', 'start ']);
    const written = CONTENT_PAGES.flatMap((page) => languagesOf(page).map((language) => `${page} ${language}`));
    expect(written.filter((block) => !apart.has(block) && !reader.hasRun.has(block))).toEqual([]);
  });
});
