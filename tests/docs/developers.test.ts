import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { MANIFEST_FORMAT } from '../../worker/core/pack/manifest.ts';
import { FACTS_FORMAT } from '../../worker/core/pack/pack-facts.ts';
import { SEAL_FORMAT } from '../../worker/core/seal/claims.ts';
import { FORMAT as EXPORT_FORMAT } from '../../worker/local/backup/format.ts';
import { ROOT } from '../../worker/local/service/places.ts';

const text = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
const named = [...text.matchAll(/`([^`\s]+)`/g)].map(([, name = '']) => name);

test('DEVELOPERS.md names tests that are there, one for every invariant', () => {
  const tests = named.filter((name) => name.startsWith('tests/'));
  expect(tests.length).toBeGreaterThan(40);
  expect(tests.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  const [, invariants = ''] = /## Invariants\n(.*?)\n## /s.exec(text) ?? [];
  const without = invariants.split('\n').filter((line) => /^\d+\. /.test(line) && !line.includes('`tests/'));
  expect(without).toEqual([]);
});

test('DEVELOPERS.md names sources that are there', () => {
  const sources = [...new Set(named.filter((name) => /^[\w/-]+\.ts$/.test(name)))];
  expect(sources.length).toBeGreaterThan(30);
  const files = globSync('{worker,site,templates,tests}/**/*.ts', { cwd: ROOT }).map((path) => `/${path}`);
  expect(sources.filter((name) => !files.some((path) => path.endsWith(`/${name}`)))).toEqual([]);
});

test('DEVELOPERS.md names the forms that are written now', () => {
  for (const form of [MANIFEST_FORMAT, SEAL_FORMAT, FACTS_FORMAT, EXPORT_FORMAT]) expect(named).toContain(form);
});

test('DEVELOPERS.md is short, and keeps a dozen decisions', () => {
  expect(text.split(/\s+/).filter((word) => word !== '').length).toBeLessThanOrEqual(2000);
  const [, decisions = ''] = /## Decisions that bind\n(.*?)\n## /s.exec(text) ?? [];
  expect(decisions.match(/^\d+\. /gm)?.length ?? 0).toBeLessThanOrEqual(12);
});
