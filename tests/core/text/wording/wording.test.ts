import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PATTERNS } from './patterns.ts';
import { type Texts, textsByKind } from './sources.ts';

type Counts = Record<string, number>;

const FILE = join(import.meta.dirname, 'counts.json');

/** Words of a sentence. */
const length = (sentence: string): number => sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

const hits = (texts: Texts, pattern: RegExp): number =>
  texts.reduce((sum, text) => sum + [...text.matchAll(pattern)].length, 0);

function countsOf(kind: string, texts: Texts): Counts {
  const long = texts
    .flatMap((text) => text.split(/(?<=[.:;?!])\s|\n\n/))
    .filter((sentence) => length(sentence) > 30).length;
  return {
    ...Object.fromEntries(PATTERNS.map(([name, pattern]) => [name, hits(texts, pattern)])),
    // Code is no prose: its sentences are not told apart.
    ...(kind === 'code' ? {} : { 'more than 30 words': long }),
  };
}

const now = Object.fromEntries(Object.entries(textsByKind()).map(([kind, texts]) => [kind, countsOf(kind, texts)]));
const kept = JSON.parse(readFileSync(FILE, 'utf8')) as Record<string, Counts>;

/** Counts only fall: what has become fewer is written down by `REGEN=1`, what has become more never is. */
if (process.env.REGEN) {
  const lower = Object.fromEntries(
    Object.entries(now).map(([kind, counts]) => [
      kind,
      Object.fromEntries(
        Object.entries(counts).map(([name, count]) => [name, Math.min(count, kept[kind]?.[name] ?? count)]),
      ),
    ]),
  );
  writeFileSync(FILE, `${JSON.stringify(lower, null, 2)}\n`);
}

describe.each(Object.entries(now))('wordings to be avoided in %s', (kind, counts) => {
  test('have become no more', () => {
    const more = Object.entries(counts)
      .filter(([name, count]) => count > (kept[kind]?.[name] ?? 0))
      .map(([name, count]) => {
        const instead = PATTERNS.find(([known]) => known === name)?.[2] ?? 'shorter sentences';
        return `“${name}”: ${count}, before ${kept[kind]?.[name] ?? 0}; write: ${instead}`;
      });
    expect(more).toEqual([]);
  });

  test('that became fewer are written down', () => {
    if (process.env.REGEN) return;
    expect(kept[kind]).toEqual(counts);
  });
});
