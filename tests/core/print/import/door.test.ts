import { readdirSync, readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { LIMITS } from '../../../../worker/core/limits.ts';
import * as door from '../../../../worker/core/print/import/index.ts';
import { inspectAttachment, type PrintDocument, print } from '../../../../worker/core/print/index.ts';
import { jobOf } from '../sample-job.ts';
import { HOSTILE_FILES } from './hostile-files.ts';
import { onePage, streamOf } from './pdf-of.ts';

/** What happens to arguments and answers on their way: nothing, or what happens to them between two Workers. */
const crossing = vi.hoisted(() => ({ send: <Value>(value: Value): Value => value, sent: 0 }));

vi.mock(import('../../../../worker/core/print/import/index.ts'), async (original) => {
  const { inspectPdf, readPdf } = await original();
  return {
    inspectPdf: (bytes: Uint8Array) => crossing.send(inspectPdf(crossing.send(bytes))),
    readPdf: (bytes: Uint8Array) => crossing.send(readPdf(crossing.send(bytes))),
  };
});

const between = <Value>(value: Value): Value => {
  crossing.sent += 1;
  return structuredClone(value);
};

beforeEach(() => Object.assign(crossing, { send: (value: unknown) => value, sent: 0 }));

const FIXTURES = `${import.meta.dirname}/../../../../fixtures`;
const FILES: Readonly<Record<string, Uint8Array>> = Object.fromEntries([
  ...['attachments', 'papers'].flatMap((folder) =>
    readdirSync(`${FIXTURES}/${folder}`)
      .filter((name) => /\.(pdf|jpg|png)$/.test(name))
      .map((name) => [name, new Uint8Array(readFileSync(`${FIXTURES}/${folder}/${name}`))]),
  ),
  ...['an ink', 'an ink of the same name', 'a fax without an end', 'forty fonts that are not embedded'].map((name) => [
    name,
    HOSTILE_FILES[name]?.() ?? new Uint8Array(),
  ]),
  [
    'a stamp',
    onePage({
      page: '/Annots[<</Subtype/Stamp/Rect[0 0 9 9]/AP<</N 6 0 R>>>>]',
      objects: [streamOf('0 0 5 5 re f', '/Subtype/Form/BBox[0 0 9 9]')],
    }),
  ],
]);
const READABLE = Object.keys(FILES).filter((name) => door.readPdf(FILES[name] ?? new Uint8Array()).ok);

/** Whatever in a value is no number, text, truth value, null, list, plain object, map or bytes. */
function foreignParts(value: unknown, path = ''): string[] {
  if (value === null || ['number', 'string', 'boolean'].includes(typeof value)) return [];
  if (value instanceof Uint8Array) return [];
  const isPlain =
    typeof value === 'object' &&
    [Object.prototype, Array.prototype, Map.prototype].includes(Object.getPrototypeOf(value));
  if (!isPlain || Object.getOwnPropertySymbols(value).length > 0) return [`${path}: ${String(value)}`];
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  return entries.flatMap(([key, part]) => foreignParts(part, `${path}/${key}`));
}

function documentOf(name: string, i: number): PrintDocument {
  const html = `<article id="annex-${i}" lang="en"><h1>Annex</h1></article>`;
  const bytes = FILES[name] ?? new Uint8Array();
  return { id: `annex-${i}`, title: `Annex ${i}`, html, appended: { bytes, title: name } };
}

describe('the reader of foreign PDFs', () => {
  test('inspects and reads, and does nothing else', () =>
    expect(Object.keys(door).sort()).toEqual(['inspectPdf', 'readPdf']));

  test.each(Object.keys(FILES))('answers plain data that can be sent: %s', (name) => {
    const bytes = FILES[name] ?? new Uint8Array();
    for (const answer of [door.inspectPdf(bytes), door.readPdf(bytes)]) {
      expect(foreignParts(answer)).toEqual([]);
      expect(structuredClone(answer)).toStrictEqual(answer);
    }
  });

  test('and this test would notice what is not', () => {
    class Colour {}
    for (const value of [new Colour(), () => 1, Symbol('a'), undefined, new Set(), { [Symbol('a')]: 1 }, new Date(0)])
      expect(foreignParts({ at: [new Map([['key', value]])] })).toEqual([expect.stringContaining('/at/0/key: ')]);
  });
});

describe('print() by a reader in another Worker gives the same bytes', () => {
  test.each([...READABLE.map((name) => [name]), READABLE])('%s', async (...names) => {
    const job = jobOf('', { documents: names.map(documentOf) });
    const here = await print(job);
    crossing.send = between;
    const there = await print(job);
    expect(crossing.sent).toBe(2 * names.length);
    expect(Buffer.from(there.bytes).equals(Buffer.from(here.bytes))).toBe(true);
    expect(there).toEqual(here);
  });

  test.each(Object.keys(FILES))('and the same facts of %s', async (name) => {
    const bytes = FILES[name] ?? new Uint8Array();
    const here = await inspectAttachment(bytes);
    crossing.send = between;
    expect(await inspectAttachment(bytes)).toStrictEqual(here);
  });
});

describe('a refusal is an answer', () => {
  test.each([
    ['encrypted', 'encrypted', FILES['encrypted.pdf']],
    ['holding scripts', 'scripted', FILES['scripted.pdf']],
    ['cut off', 'damaged', FILES['truncated.pdf']],
    ['a picture', 'unknown-type', FILES['loom.jpg']],
    ['empty', 'unknown-type', new Uint8Array()],
    ['of too many bytes', 'too-large', new Uint8Array(LIMITS.annexBytes + 1)],
    ['too costly', 'too-large', HOSTILE_FILES['a table of millions']?.()],
  ])('for a file that is %s', (_, refusal, bytes = new Uint8Array()) => {
    const refused = { ok: false, refusal, detail: { id: expect.any(String) } };
    for (const answer of [door.inspectPdf(bytes), door.readPdf(bytes)]) {
      expect(answer).toMatchObject(refused);
      expect(foreignParts(answer)).toEqual([]);
    }
    expect(door.readPdf(bytes)).toStrictEqual(door.inspectPdf(bytes));
  });

  test('and print() throws it with what is the matter', async () => {
    crossing.send = between;
    const printed = print(jobOf('', { documents: [documentOf('scripted.pdf', 1)] }));
    await expect(printed).rejects.toMatchObject({
      message: expect.stringMatching(/^Cannot print annex-1: it must pass inspection: ./),
      cause: { refusal: 'scripted', fault: { id: 'holds-scripts' } },
    });
  });
});
