import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { seal } from '../worker/core/core.ts';
import { RULES } from '../worker/core/gate/rules.ts';
import { visitJsonSchema } from '../worker/core/record/json-schema.ts';
import { openapi } from '../worker/edge/http/openapi.ts';
import { ROUTES } from '../worker/edge/http/routes.ts';
import { RELEASABLE_AT } from './core/gate/assess-record.ts';
import { assessed, FILES, posted } from './core/pack/fixture.ts';
import { pageTexts } from './core/print/read-back.ts';

/**
 * What others rely on, kept as files so that a reviewer sees every change of it: the published schema, the description of
 * the API, the codes of the gate, and the text of each fixture pack. `REGEN=1 npm test` rewrites them.
 */
const FOLDER = join(import.meta.dirname, '../fixtures/reference');
const VISITS = readdirSync(join(import.meta.dirname, '../fixtures/visits')).map((file) => file.replace('.json', ''));

function check(name: string, content: string): void {
  const path = join(FOLDER, name);
  if (process.env.REGEN) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
  expect(existsSync(path), `${name} is missing: REGEN=1 writes it`).toBe(true);
  expect(content).toBe(readFileSync(path, 'utf8'));
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;

describe('reference', () => {
  test('visit.schema.json is the published schema', () => check('visit.schema.json', json(visitJsonSchema())));

  test('openapi.json is the published description', () => check('openapi.json', json(openapi(ROUTES))));

  test('rules.txt has every code with its severity', () =>
    check('rules.txt', RULES.map(({ code, severity }) => `${severity.padEnd(8)} ${code}\n`).join('')));

  const packs = [
    ...VISITS.map((name) => ({ name, file: name })),
    { name: 'nose-wheel-full', file: 'nose-wheel-full.de' },
  ];
  test.each(packs)('the pack of $file reads as before', async ({ name, file }) => {
    const record = posted(name) as { release: { by: string }; workshop: { language?: string } };
    if (file.endsWith('.de')) record.workshop.language = 'de';
    const at = RELEASABLE_AT[name] ?? '';
    const visit = await assessed(record, at);
    const read = visit.assessmentSha256;
    const place = { pack: 'REFERENCE-P1-1', number: 1, issue: 1, visit: name, before: [] };
    const outcome = await seal(visit, { by: record.release.by, knowsOfNoHazard: true, at, read }, place, FILES);
    if (!outcome.ok) throw new Error(json(outcome.findings));
    const pages = await pageTexts(outcome.sealed.pdf);
    check(`packs/${file}.txt`, pages.map((text, index) => `=== ${index + 1} ===\n${text}\n`).join('\n'));
  });
});
