import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { transform } from 'esbuild';
import { expect, test } from 'vitest';
import { bundle } from '../../../worker/local/service/bundle.ts';

// What is added to it costs every cold start: a larger limit needs its reason in the commit. Classes, configurations, two axes
// and 140 fields with texts in two languages took 40 of it; the standing file, flights, counters and measured figures 30;
// kinds of equipment, the table of obligations and 80 rules with texts in two languages 40; the comparison with the
// standing file and 15 rules 20.
const MAX_GZIP_KIB = 710;

test('the Worker, packed as it is deployed, stays within its size', async () => {
  const { code } = await transform(readFileSync(await bundle(), 'utf8'), {
    minify: true,
    keepNames: true,
    format: 'esm',
    target: 'es2024',
  });
  expect(gzipSync(code).length / 1024).toBeLessThan(MAX_GZIP_KIB);
});
