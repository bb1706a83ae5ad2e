import { Session } from 'node:inspector';
import { describe, expect, test } from 'vitest';
import type { Example, Formula, Said, Sum } from '../../site/formulas/formula.ts';
import { ORIGINS, originOf } from '../../site/formulas/origins.ts';
import { putIn, worked } from '../../site/formulas/put-in.ts';
import { TOPICS } from '../../site/formulas/topics.ts';
import { formulas as page } from '../../site/pages/formulas.ts';
import type { PublishedCase } from '../../site/published/published-table.ts';
import { percentMac } from '../../worker/core/calc/mass/mac.ts';
import { unprintableIn } from '../../worker/core/text/printable.ts';
import { readFixture } from '../read-fixture.ts';
import { computed } from './pocket-calculator.ts';
import { UNCOMPUTED } from './uncomputed.ts';

const FORMULAS = TOPICS.flatMap(({ formulas }) => formulas);
const named = new Set(FORMULAS.flatMap(({ by }) => by.map(({ name }) => name)));
const examples = new Map<Formula, Example>(FORMULAS.map((formula) => [formula, formula.example()]));

const exampleOf = (formula: Formula): Example => examples.get(formula) as Example;
const sumsOf = ({ steps }: Example): Sum[] => steps.filter((step) => 'tex' in step);
const saidOf = ({ steps }: Example): Said[] => steps.filter((step) => 'say' in step);

describe('what is computed', () => {
  const exported = [...ORIGINS.values()]
    .filter(({ file }) => file.startsWith('worker/core/calc/'))
    .map(({ name }) => name);

  test('every function of calc is named by a formula, or is left out for a reason', () => {
    expect(exported.length).toBeGreaterThan(100);
    expect(exported.filter((name) => !named.has(name) && !(name in UNCOMPUTED))).toEqual([]);
  });

  test('no reason is given for what is named, or is not there', () => {
    expect(Object.keys(UNCOMPUTED).filter((name) => named.has(name) || !exported.includes(name))).toEqual([]);
  });

  test('no two functions have one name, so a name tells which it is', () => {
    expect(new Set(exported).size).toBe(exported.length);
  });
});

/** Names of the functions of `worker` that run while something is done. */
function calledBy(work: () => void): Set<string> {
  const session = new Session();
  session.connect();
  let called = new Set<string>();
  session.post('Profiler.enable');
  session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
  work();
  session.post('Profiler.takePreciseCoverage', (_, { result }) => {
    const functions = result.filter(({ url }) => url.includes('/worker/')).flatMap((script) => script.functions);
    called = new Set(functions.filter(({ ranges }) => (ranges[0]?.count ?? 0) > 0).map((each) => each.functionName));
  });
  session.disconnect();
  return called;
}

test('a function that is not called is not taken for called', () => {
  const called = calledBy(() => percentMac(undefined, 0));
  expect([called.has('percentMac'), called.has('total')]).toEqual([true, false]);
});

/** What TeX itself says: no symbol of a formula. */
const COMMAND =
  /\\(?:frac|sqrt|sum|cdot|left|right|lfloor|rfloor|lceil|rceil|oplus|leq|geq|min|max|sin|cos|tan|arctan|pi|rightarrow)(?![a-zA-Z])/g;

describe.each(FORMULAS.map((formula) => [formula.id, formula] as const))('%s', (id, formula) => {
  test('names functions that its example really calls, each with a source', () => {
    const called = calledBy(() => formula.example());
    expect(formula.by.map(({ name }) => name).filter((name) => !called.has(name))).toEqual([]);
    for (const computing of formula.by) expect(originOf(computing).source.length).toBeGreaterThan(5);
  });

  test('explains every symbol, and none that is not there', () => {
    const tex = formula.tex.join(' ');
    const symbols = formula.symbols.map(([symbol]) => symbol);
    const left = putIn(tex, new Map(symbols.map((symbol) => [symbol, 0])));
    expect(
      left
        .replaceAll(COMMAND, ' ')
        .replaceAll(/_[a-z]\b/g, ' ')
        .match(/\\?[a-zA-Z]+/g) ?? [],
    ).toEqual([]);
    for (const symbol of symbols) expect(tex).toContain(symbol);
  });

  test('gives values to symbols that it explains', () => {
    const symbols = formula.symbols.map(([symbol]) => symbol);
    const general = (symbol: string): string[] => ['i', 'j', 'k'].map((index) => symbol.replace(/_\w+$/, `_${index}`));
    const given = Object.keys(exampleOf(formula).given);
    expect(given.filter((symbol) => ![symbol, ...general(symbol)].some((each) => symbols.includes(each)))).toEqual([]);
  });

  test('is followed on a pocket calculator to what the code gives', () => {
    for (const [step, { right }] of worked(exampleOf(formula))) {
      // Numbers are printed with seven digits, so the greatest of them decides how closely a reader comes.
      const greatest = Math.max(...(right.match(/[\d.]+/g) ?? []).map(Number));
      const close = Math.max(Math.abs(step.result) * 1e-5, greatest * 1e-6);
      expect(Math.abs(computed(right) - step.result), `${step.tex}: ${right}`).toBeLessThan(close);
    }
  });

  test('has a result, and agrees with its published case', () => {
    const example = exampleOf(formula);
    expect(example.steps.length).toBeGreaterThan(0);
    for (const { result } of sumsOf(example)) expect(result).not.toBeNaN();
    if (example.case === undefined) return;
    const { expected, tolerance } = readFixture(`published/${example.case}`) as PublishedCase;
    const ours = [
      ...sumsOf(example).flatMap((step) =>
        step.expected === undefined ? [] : [[step.expected, step.result] as const],
      ),
      ...saidOf(example).flatMap(({ results = {} }) => Object.entries(results)),
    ];
    expect(ours.length).toBeGreaterThan(0);
    for (const [quantity, value] of ours) {
      expect(Object.keys(expected)).toContain(quantity);
      const residual = Math.abs(value - (expected[quantity] ?? Number.NaN));
      expect(residual, `${id}: ${quantity}`).toBeLessThanOrEqual((tolerance[quantity] ?? 0) + 1e-12);
    }
  });
});

describe('the page', () => {
  const { markup } = page.body;

  test('has each formula once', () => {
    const ids = [...markup.matchAll(/<section class="formula" id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids).toEqual(FORMULAS.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('has no sign that the face of the text lacks', () => {
    const text = markup.replaceAll(/<math[\s\S]*?<\/math>|<[^>]+>/g, ' ').replaceAll(/&\w+;|\n/g, ' ');
    expect(unprintableIn(text)).toEqual([]);
  });

  test('shows no number that is none, and asks for no style or script of its own', () => {
    expect(markup).not.toMatch(/NaN|undefined|Infinity/);
    expect(markup).not.toMatch(/ style=|<script/);
  });
});
