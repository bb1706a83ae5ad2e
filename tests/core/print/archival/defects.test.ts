import { describe, expect, test } from 'vitest';
import { print } from '../../../../worker/core/print/index.ts';
import { jobOf, paragraphs, tableOf } from '../sample-job.ts';
import { archivalDefects, CHECKS } from './checks.ts';
import { CONTENT_DEFECTS } from './defects/content-defects.ts';
import { spoilt } from './defects/draft.ts';
import { FILE_DEFECTS } from './defects/file-defects.ts';
import { STRUCTURE_DEFECTS } from './defects/structure-defects.ts';

const DEFECTS = [...FILE_DEFECTS, ...CONTENT_DEFECTS, ...STRUCTURE_DEFECTS];

const CHART =
  '<figure><svg viewBox="0 0 100 40" role="img" aria-label="A line that climbs"><line x1="0" y1="40" x2="100" y2="0" stroke="black"/></svg><figcaption>Climb</figcaption></figure>';
const HTML = `<section><h2>Two</h2><p>See <a href="#t">the table</a>, 12 rows.</p><ul><li>Item</li><li>Other</li></ul><dl class="facts"><div><dt>Mass</dt><dd>1 kg</dd></div></dl>${CHART}<section id="t">${tableOf(12)}</section>${paragraphs(20)}</section>`;

/** A file with one of everything. */
const good = print(
  jobOf(HTML, {
    mark: 'NOT RELEASED',
    attachments: (['record.json', 'manifest.json'] as const).map((name) => ({
      name,
      bytes: new TextEncoder().encode('{"mass":1}'),
      mediaType: 'application/json',
      description: 'Data',
      relationship: 'Data',
    })),
  }),
);

describe('archivalDefects()', () => {
  test('finds nothing in a good file, as written and as saved again', async () => {
    const { bytes } = await good;
    expect(await archivalDefects(bytes)).toEqual({});
    expect(await archivalDefects(await spoilt(bytes, { check: '' }))).toEqual({});
  });

  test.each(DEFECTS.map((defect) => ({ ...defect, title: [defect.check, defect.what].filter(Boolean).join(': ') })))(
    'finds $title, and nothing else',
    async (defect) => {
      const { bytes } = await good;
      expect(Object.keys(await archivalDefects(await spoilt(bytes, defect)))).toEqual([defect.check]);
    },
  );

  test('is proved by a defect for every check', () => {
    const proved = new Set(DEFECTS.map(({ check }) => check));
    expect(CHECKS.map(({ name }) => name).filter((name) => !proved.has(name))).toEqual([]);
  });
});
