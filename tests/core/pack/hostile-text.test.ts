import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assess, draftDocuments, draftPdf } from '../../../worker/core/core.ts';
import { RUNS } from '../../property-runs.ts';
import { archivalDefects } from '../print/archival/checks.ts';
import { openPdf } from '../print/archival/pdf-file.ts';
import { openFile } from '../print/read-back.ts';
import { AT, assessed, FILES, posted } from './fixture.ts';
import { type FreeText, freeTexts, hostileText, withAcceptedTexts, withTexts } from './hostile-text.ts';

const RECORD = posted('nose-wheel-full');
const FREE = freeTexts(RECORD);

/** Hostile texts for so many fields at once. */
const changes = (fields: number): fc.Arbitrary<[FreeText, string][]> =>
  fc.array(fc.tuple(fc.constantFrom(...FREE), hostileText), { minLength: 1, maxLength: fields, size: 'max' });

/** How often each element stands in the documents, and in the structure tree that is to say the same. */
const ROLES = { article: 'Art', table: 'Table', h1: 'H1', h2: 'H2' } as const;

function countedIn(html: string): Record<string, number> {
  return Object.fromEntries(
    Object.entries(ROLES).map(([element, role]) => [role, html.match(new RegExp(`<${element}[ >]`, 'g'))?.length ?? 0]),
  );
}

async function countedOn(bytes: Uint8Array): Promise<Record<string, number>> {
  const { elements } = await openPdf(bytes);
  return Object.fromEntries(
    Object.values(ROLES).map((role) => [role, elements.filter(({ type }) => type === role).length]),
  );
}

/** Texts that leave the page, as an outside reader places them. The mark across the page is not upright and is left out. */
async function textsOutside(bytes: Uint8Array): Promise<string[]> {
  const file = await openFile(bytes);
  const outside: string[] = [];
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    for (const item of items) {
      if (!('str' in item) || item.transform[1] !== 0) continue;
      const [x, y] = [item.transform[4], item.transform[5]] as [number, number];
      if (x < left || y < bottom || x + item.width > right || y + item.height > top)
        outside.push(`${number}: ${item.str}`);
    }
  }
  await file.loadingTask.destroy();
  return outside;
}

describe('hostile text in any field', () => {
  test('is looked for in every kind of text that a record has', () => {
    expect(FREE.length).toBeGreaterThan(500);
    expect(FREE.map(({ path }) => path)).toContain('/workshop/name');
  });

  test('never breaks an assessment', async () => {
    await fc.assert(
      fc.asyncProperty(changes(8), async (texts) => {
        const outcome = await assess(withTexts(RECORD, texts), AT);
        const said = outcome.ok ? outcome.assessed.findings : outcome.issues;
        for (const { pointer, sentence } of said) {
          expect(typeof pointer).toBe('string');
          expect(sentence).not.toMatch(/undefined|\[object/);
        }
      }),
      RUNS,
    );
  });

  test('is refused with a pointer where it is longer than a field holds', async () => {
    for (const { path } of FREE.filter((_, i) => i % 40 === 0)) {
      const outcome = await assess(withTexts(RECORD, [[{ path, most: 100_000 }, 'W'.repeat(100_000)]]), AT);
      expect(outcome.ok ? [] : outcome.issues.map(({ pointer }) => pointer)).toContain(path);
    }
  });

  test('is named, with its place, where no pack can print it', async () => {
    const texts = FREE.map((field): [FreeText, string] => [field, `\u0007${'x'.repeat(field.most)}`]);
    const { findings } = await assessed(withAcceptedTexts(RECORD, texts));
    const found = findings.filter(({ code }) => code === 'TEXT_UNPRINTABLE');
    expect(found.length).toBeGreaterThan(500);
    for (const { sentence, pointer } of found) {
      expect(sentence).toContain('U+0007');
      expect(FREE.map(({ path }) => path)).toContain(pointer);
    }
  });

  test('leaves a pack whole: every clause kept, every table there, nothing beside the page', async () => {
    await fc.assert(
      fc.asyncProperty(changes(200), async (texts) => {
        const visit = await assessed(withAcceptedTexts(RECORD, texts));
        const html = (await draftDocuments(visit, AT)).map((document) => document.html).join('\n');
        const { bytes } = await draftPdf(visit, AT, { files: FILES });
        expect(await archivalDefects(bytes)).toEqual({});
        expect(await countedOn(bytes)).toEqual(countedIn(html));
        expect(await textsOutside(bytes)).toEqual([]);
      }),
      { ...RUNS, numRuns: 8 },
    );
  });
});
