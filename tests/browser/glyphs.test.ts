import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../../site/build/launch-browser.ts';
import { FACE_CHARACTERS } from '../../worker/core/print/fonts/face.ts';
import { print } from '../../worker/core/print/index.ts';
import { contentOf, get } from '../core/print/archival/objects.ts';
import { openPdf } from '../core/print/archival/pdf-file.ts';
import { jobOf } from '../core/print/sample-job.ts';

const FACES = ['Regular', 'Semibold', 'It'];
const SIZE_PX = 64;

interface Compared {
  /** Characters that differ in any pixel by more than what smoothing does. */
  differing: string[];
  /** Characters that leave no trace. */
  blank: string[];
}

interface Given {
  ours: string;
  theirs: string;
  characters: readonly string[];
  sizePx: number;
}

/** Runs in the browser, so that it can use nothing from around it: draws each character in two faces. */
async function compareFaces({ ours, theirs, characters, sizePx }: Given): Promise<Compared> {
  document.fonts.clear();
  for (const [family, program] of Object.entries({ ours, theirs })) {
    const bytes = Uint8Array.from(atob(program), (character) => character.charCodeAt(0));
    document.fonts.add(await new FontFace(family, bytes).load());
  }
  const canvas = Object.assign(document.createElement('canvas'), { width: 2 * sizePx, height: 2 * sizePx });
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('Cannot compare faces: there must be a canvas');
  context.textRendering = 'geometricPrecision';
  const drawn = (family: string, character: string): Uint8ClampedArray => {
    context.clearRect(0, 0, canvas.width, canvas.height);
    context.font = `${sizePx}px ${family}`;
    context.fillText(character, sizePx / 2, 1.5 * sizePx);
    return context.getImageData(0, 0, canvas.width, canvas.height).data;
  };
  const seen: Compared = { differing: [], blank: [] };
  for (const character of characters) {
    const [one, other] = [drawn('ours', character), drawn('theirs', character)];
    if (one.some((value, i) => Math.abs(value - (other[i] ?? 0)) > 24)) seen.differing.push(character);
    if (!one.some((value) => value > 0)) seen.blank.push(character);
  }
  return seen;
}

/** The font programs as they stand in a finished file, in base64, by the name of the face. */
async function embeddedPrograms(): Promise<Map<string, string>> {
  const { fonts } = await openPdf((await print(jobOf('<p>Text</p>'))).bytes);
  return new Map(
    fonts.map(({ name, descendant }) => {
      const program = contentOf(get(descendant, 'FontDescriptor', 'FontFile2'));
      return [name.replace(/.*-/, ''), Buffer.from(program ?? []).toString('base64')];
    }),
  );
}

const wholeProgram = (face: string): string =>
  readFileSync(createRequire(import.meta.url).resolve(`source-sans/TTF/SourceSans3-${face}.ttf`)).toString('base64');

let browser: Browser;
let page: Page;
let embedded: Map<string, string>;

beforeAll(async () => {
  embedded = await embeddedPrograms();
  browser = await launchBrowser();
  page = await browser.newPage();
});

afterAll(() => browser?.close());

function compared(ours: string, theirs: string): Promise<Compared> {
  const characters = FACE_CHARACTERS.map((codePoint) => String.fromCodePoint(codePoint));
  return page.evaluate(compareFaces, { ours, theirs, characters, sizePx: SIZE_PX });
}

describe('the fonts of a pack', () => {
  test.each(FACES)('%s shows every character as the whole font does', async (face) => {
    const { differing, blank } = await compared(embedded.get(face) ?? '', wholeProgram(face));
    expect(differing).toEqual([]);
    expect(blank).toEqual([' ', '\u00a0']);
  });

  test('are compared by what can be seen: another weight differs in nearly every character', async () => {
    const { differing } = await compared(embedded.get('Regular') ?? '', wholeProgram('Semibold'));
    expect(differing.length).toBeGreaterThan(0.95 * FACE_CHARACTERS.length);
  });
});
