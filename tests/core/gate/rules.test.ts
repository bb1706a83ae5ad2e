import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { REGIMES, regimeNamed } from '../../../worker/core/gate/regimes/table.ts';
import type { Rule } from '../../../worker/core/gate/rule.ts';
import { RULES } from '../../../worker/core/gate/rules.ts';
import { mayBlock } from '../../../worker/core/gate/source.ts';
import { EVIDENCE } from '../../../worker/core/record/not-required.ts';
import { inEnglish } from '../../../worker/core/text/formatter.ts';
import { said } from '../../../worker/core/text/message.ts';
import { PATTERNS } from '../text/wording/patterns.ts';

const FOLDER = `${import.meta.dirname}/../../../worker/core/gate/rules`;
/** A folder for each area, in which every file but the list of the area is a rule. */
const FILES = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts') && !path.endsWith('/index.ts'))
  .map((path) => path.replace(/\.ts$/, ''));

describe('RULES', () => {
  for (const file of FILES) {
    test(`${file} is listed once, under the code of its file name`, async () => {
      const exported = Object.values((await import(`${FOLDER}/${file}.ts`)) as Record<string, Rule>);
      expect(exported).toHaveLength(1);
      expect(exported[0]?.code).toBe(basename(file).toUpperCase().replaceAll('-', '_'));
      expect(RULES.filter((rule) => rule === exported[0])).toHaveLength(1);
    });
  }

  test('has no rule without a file of its own', () => {
    // Rules on evidence follow from the table of obligations.
    expect(RULES).toHaveLength(FILES.length + EVIDENCE.length);
    expect(new Set(RULES.map(({ code }) => code)).size).toBe(RULES.length);
  });

  test('every rule says what it means, what to do and where it comes from', () => {
    for (const { code, meaning, remedy, source } of RULES) {
      for (const text of [meaning, inEnglish(said(remedy)), source.text]) expect(text.length, code).toBeGreaterThan(5);
      expect(meaning, code).not.toMatch(/\.$/);
    }
  });

  for (const { code, meaning, remedy } of RULES) {
    test(`${code} has a meaning and a remedy of 20 words or fewer, all of them plain`, () => {
      for (const text of [meaning, inEnglish(said(remedy))]) {
        expect(text.split(/\s+/).length, text).toBeLessThanOrEqual(20);
        expect(PATTERNS.filter(([, pattern]) => text.search(pattern) >= 0).map(([name]) => name)).toEqual([]);
      }
    });
  }

  test('no rule blocks whose source was not read', () => {
    expect(RULES.filter(({ severity, source }) => severity === 'blocks' && !mayBlock(source))).toEqual([]);
  });

  test('a source is a reference: its status, not its text, says whether it was read', () => {
    const sources = [
      ...RULES.map(({ source }) => source),
      ...REGIMES.flatMap(({ statements, ...regime }) => [
        ...statements.map(({ source }) => source),
        ...Object.values(regime).flatMap((value) =>
          typeof value === 'object' && 'source' in value ? [value.source] : [],
        ),
      ]),
    ];
    expect(
      sources.filter(({ text }) =>
        /memory|unverified|not read|own wording|second-hand|as (?:summarised|reproduced|quoted)/.test(text),
      ),
    ).toEqual([]);
  });
});

describe('REGIMES', () => {
  test('have different names, and every value has a unit and a source', () => {
    expect(new Set(REGIMES.map(({ id }) => id)).size).toBe(REGIMES.length);
    for (const { id: _id, title: _title, version, statements, ...values } of REGIMES) {
      expect(version).toMatch(/^\d{4}-\d{2}-\d{2}$/);
      expect(new Set(statements.map(({ id }) => id)).size).toBe(statements.length);
      for (const [name, { unit, source }] of Object.entries(values)) {
        expect(unit.length, name).toBeGreaterThan(0);
        expect(source.text.length, name).toBeGreaterThan(5);
      }
    }
  });

  test('regimeNamed() gives the generic one for a name that is not known', () => {
    expect(regimeNamed('lunar').id).toBe('generic');
  });
});
