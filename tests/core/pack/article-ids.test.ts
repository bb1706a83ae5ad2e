import { expect, test } from 'vitest';
import { draftPdf } from '../../../worker/core/core.ts';
import { articleIds } from '../../../worker/core/pack/article-ids.ts';
import { AT, assessed, FILES, posted } from './fixture.ts';

test('articleIds() are different for entries that differ in case or in a dot only', () => {
  const ids = articleIds('modification', ['M1', 'm1', 'M.1', 'm-1', 'M1_2']);
  expect(new Set(ids).size).toBe(5);
  expect(ids.slice(0, 2)).toEqual(['modification-m1', 'modification-m1_2']);
  for (const id of ids) expect(id).toMatch(/^modification-[a-z0-9_-]+$/);
});

test('a visit prints whose modifications have the same name in capitals and in small letters', async () => {
  const record = JSON.parse(JSON.stringify(posted('nose-wheel-full')).replaceAll('"M2"', '"m1"'));
  const { findings } = await draftPdf(await assessed(record), AT, { files: FILES });
  expect(findings).toEqual([]);
});
