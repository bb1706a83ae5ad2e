import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fixturesIn } from '../../../read-fixture.ts';
import { draftFixture, sealedFixture } from '../printed-fixture.ts';
import { type GreyPicture, pictureFrom, pngFrom } from './grey-picture.ts';
import { pagePictures } from './page-pictures.ts';
import { pictureDifference } from './picture-difference.ts';

/**
 * How every page looks, kept as small grey pictures so that a reviewer sees every change. `REGEN=1 npm test` rewrites them; what differs
 * is left in a folder outside git, as it is now and as the pixels that changed.
 */
const FOLDER = join(import.meta.dirname, '../../../../fixtures/reference/pages');
const LIVE = join(import.meta.dirname, '../../../.live/pages');

const fileOf = (page: number): string => `${String(page + 1).padStart(2, '0')}.png`;

function regenerate(pack: string, pictures: readonly GreyPicture[]): void {
  rmSync(join(FOLDER, pack), { recursive: true, force: true });
  mkdirSync(join(FOLDER, pack), { recursive: true });
  for (const [page, picture] of pictures.entries()) writeFileSync(join(FOLDER, pack, fileOf(page)), pngFrom(picture));
}

/** The pages that look otherwise than they did, each left for inspection. */
function changedPages(pack: string, pictures: readonly GreyPicture[]): string[] {
  return pictures.flatMap((picture, page) => {
    const kept = join(FOLDER, pack, fileOf(page));
    const golden = existsSync(kept)
      ? pictureFrom(readFileSync(kept))
      : { width: 0, height: 0, greys: new Uint8Array() };
    const difference = pictureDifference(picture, golden);
    if (!difference) return [];
    const live = join(LIVE, `${pack}-${fileOf(page)}`);
    mkdirSync(LIVE, { recursive: true });
    writeFileSync(live, pngFrom(picture));
    writeFileSync(live.replace('.png', '-difference.png'), pngFrom(difference));
    return [live];
  });
}

const PACKS = [
  ...fixturesIn('visits').map((name) => ({ pack: name, print: () => sealedFixture(name) })),
  { pack: 'weighing-only-draft', print: () => draftFixture('weighing-only') },
];

describe('pages look as before', () => {
  test.each(PACKS)('$pack', async ({ pack, print }) => {
    const pictures = await pagePictures(await print());
    if (process.env.REGEN) regenerate(pack, pictures);
    expect(existsSync(join(FOLDER, pack)), `${pack} is missing: REGEN=1 writes it`).toBe(true);
    expect(changedPages(pack, pictures)).toEqual([]);
    expect(readdirSync(join(FOLDER, pack))).toHaveLength(pictures.length);
  });
});

describe('pictureDifference()', () => {
  const page: GreyPicture = { width: 20, height: 10, greys: new Uint8Array(200).fill(15) };
  const changed = (pixels: number, by: number): GreyPicture => ({
    ...page,
    greys: page.greys.map((grey, i) => (i < pixels ? grey - by : grey)),
  });

  test('sees a figure that changed', () => expect(pictureDifference(page, changed(5, 2))?.greys[4]).toBe(0));

  test('overlooks another smoothing of edges', () => {
    expect(pictureDifference(page, changed(200, 1))).toBeNull();
    expect(pictureDifference(page, changed(4, 15))).toBeNull();
  });

  test('sees another size', () => expect(pictureDifference(page, { ...page, width: 10, height: 20 })).not.toBeNull());

  test('survives being kept as a file', () => {
    const odd = { width: 3, height: 2, greys: Uint8Array.from([0, 15, 7, 3, 9, 1]) };
    expect(pictureFrom(pngFrom(odd))).toEqual(odd);
  });
});
