import { describe, expect, test } from 'vitest';
import { type SourceFile, sourceFiles } from './source-files.ts';

const FILES = sourceFiles('worker', 'site', 'templates');

/** Groups of files each of which imports all others of its group, over some way: strongly connected components, after Tarjan (1972). */
function circlesIn(files: readonly Pick<SourceFile, 'path' | 'imports'>[]): string[][] {
  const importsOf = new Map(files.map(({ path, imports }) => [path, imports]));
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const circles: string[][] = [];
  const lower = (path: string, to: number | undefined): void => {
    lowest.set(path, Math.min(lowest.get(path) ?? Number.POSITIVE_INFINITY, to ?? Number.POSITIVE_INFINITY));
  };
  const visit = (path: string): void => {
    order.set(path, order.size);
    lower(path, order.get(path));
    open.push(path);
    for (const imported of importsOf.get(path) ?? []) {
      if (!importsOf.has(imported)) continue;
      if (!order.has(imported)) visit(imported);
      if (open.includes(imported)) lower(path, lowest.get(imported));
    }
    if (lowest.get(path) !== order.get(path)) return;
    const circle = open.splice(open.indexOf(path));
    if (circle.length > 1) circles.push(circle.sort());
  };
  for (const { path } of files) if (!order.has(path)) visit(path);
  return circles;
}

describe('no circle of imports, of values or types', () => {
  test('in any room', () => {
    expect(FILES.length).toBeGreaterThan(500);
    expect(circlesIn(FILES)).toEqual([]);
  });

  test('and this test would notice one', () => {
    const files = [
      { path: 'a.ts', imports: ['b.ts'] },
      { path: 'b.ts', imports: ['c.ts', 'd.ts'] },
      { path: 'c.ts', imports: ['a.ts'] },
      { path: 'd.ts', imports: [] },
    ];
    expect(circlesIn(files)).toEqual([['a.ts', 'b.ts', 'c.ts']]);
  });
});

describe('what is built imports nothing that is built on it', () => {
  const imported = (from: string, to: string): string[] =>
    FILES.filter(({ path }) => path.startsWith(from)).flatMap(({ path, imports }) =>
      imports.filter((name) => name.startsWith(to)).map((name) => `${path} → ${name}`),
    );

  test('the service and the site nothing of the tests', () => expect(imported('', 'tests/')).toEqual([]));

  test('the service nothing of the site', () => expect(imported('worker/', 'site/')).toEqual([]));

  test('templates neither', () => expect(imported('templates/', 'site/')).toEqual([]));
});

/** Functions with more parameters than can be told apart by their order, by file and line. */
function withManyParameters({ path, code }: Pick<SourceFile, 'path' | 'code'>): string[] {
  const opening = /(?:\bfunction\*? ?\w*(?:<[^(]*>)?|[=(,] (?:async )?|^\s+(?:static |async |private )*#?\w+)\(/gm;
  return [...code.matchAll(opening)].flatMap((match) => {
    const inside = match.index + match[0].length;
    const { count, end } = parametersFrom(code, inside);
    const isFunction = /^\s*(:[^=;]*?)?(=>|\{)/.test(code.slice(end + 1, end + 200));
    return isFunction && count > 5 ? [`${path}:${code.slice(0, inside).split('\n').length}`] : [];
  });
}

/** How many parameters stand from a place on, and where their bracket closes. */
function parametersFrom(code: string, start: number): { count: number; end: number } {
  let depth = 0;
  let count = 0;
  let isBetween = true;
  let end = start;
  for (; end < code.length; end++) {
    const sign = code[end] ?? '';
    const isArrow = sign === '>' && code[end - 1] === '=';
    if ('([{<'.includes(sign)) depth++;
    else if (')]}>'.includes(sign) && !isArrow && depth-- === 0) break;
    if (sign === ',' && depth === 0) isBetween = true;
    else if (isBetween && /\S/.test(sign)) {
      isBetween = false;
      count++;
    }
  }
  return { count, end };
}

describe('no function takes more than five parameters by their order', () => {
  test('anywhere', () => expect(FILES.flatMap(withManyParameters)).toEqual([]));

  test('and this test would notice one that does', () => {
    const five =
      'function f(\n  a: Map<A, B>,\n  { b, c }: { b: B; c: C },\n  d: (x: X, y: Y) => Z,\n  e = [1, 2],\n  g = 1,\n): V {';
    expect(withManyParameters({ path: 'five.ts', code: five })).toEqual([]);
    for (const code of [
      five.replace('a:', 'h: H,\n  a:'),
      'const f = (a, b, c, d, e, g): void => {',
      '  f(a, b, c, d, e, g): V {',
    ])
      expect(withManyParameters({ path: 'six.ts', code })).toEqual(['six.ts:1']);
  });
});
