import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'jsonc-parser';
import { expect, test } from 'vitest';
import { contentPath } from '../../site/build/prose.ts';
import { ROOT } from '../../worker/local/service/places.ts';

test('the threat model names tests that are there', () => {
  const named = [...readFileSync(contentPath('threats'), 'utf8').matchAll(/`(tests\/[^`]+)`/g)].map(
    ([, path = '']) => path,
  );
  expect(named.length).toBeGreaterThan(15);
  expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
});

test('the platform keeps no line for each request: its address may be a link', () => {
  const { observability } = parse(readFileSync(join(ROOT, 'worker/wrangler.jsonc'), 'utf8'));
  expect(observability).toMatchObject({ logs: { invocation_logs: false }, traces: { enabled: false } });
});
