import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';
import { REGIMES } from '../worker/gate/regimes/table.ts';

const WORKER = `${import.meta.dirname}/../worker`;

/** Stages from left to right: each may import itself and what stands to its left. */
const STAGES = ['units', 'text', 'visit', 'calc', 'gate', 'pack', 'print', 'seal', 'pipeline'];

/** Free to every stage: bounds and forms of names, without behaviour. */
const FREE = ['limits.ts', 'patterns.ts'];

/** The door to the stages, so it may see all of them, and nothing of the edge. */
const JOINTS = ['pipeline.ts'];

/** What a stage may take from outside, and in which files or folders. Everything else is its own. */
const FROM_OUTSIDE: Readonly<Record<string, readonly string[]>> = {
  zod: ['visit/', 'calc/', 'pack/owner-facts-schema.ts', 'pack/summary.ts', 'pipeline/results-schema.ts'],
  'make-plural/pluralCategories': ['text/'],
  jose: ['seal/'],
  geomagnetism: ['calc/compass/'],
  'astronomy-engine': ['calc/clock/'],
  handlebars: ['pack/render.ts'],
  'handlebars/runtime.js': ['pack/render.ts'],
  '../templates/generated/templates.js': ['pack/render.ts'],
  parse5: ['print/parse/'],
  'pdf-lib': ['print/file/'],
  pako: ['print/file/deflate.ts', 'print/bytes/inflate.ts'],
};

/** Run on the maker's machine before anything is deployed; no stage imports it. */
const BUILD_SCRIPTS = [
  ...['build', 'catalogue', 'compile-all', 'compile-message', 'house-formats', 'read-format'].map(
    (name) => `text/build/${name}.ts`,
  ),
  'print/fonts/build.ts',
  'client/generate.ts',
];

const IMPORT = /^(?:import|export)\s[^'";=()]*\bfrom\s+'([^'\n]+)'|^import '([^'\n]+)'|\bimport\(\s*'([^'\n]+)'/gm;

interface Module {
  /** Path from `worker/`. */
  path: string;
  text: string;
  /** The code alone, comments blanked. */
  code: string;
  /** Packages by name, files by path from `worker/`. */
  imports: string[];
}

const MODULES: Module[] = readdirSync(WORKER, { recursive: true, encoding: 'utf8' })
  .filter(
    (path) => path.endsWith('.ts') && !path.endsWith('.d.ts') && !/(^|\/)(dist|generated|node_modules)\//.test(path),
  )
  .sort()
  .map(moduleAt);

function moduleAt(path: string): Module {
  const text = readFileSync(join(WORKER, path), 'utf8');
  const code = text
    .replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ''))
    .replace(/(^|\s)\/\/.*$/gm, '');
  const specifiers = [...code.matchAll(IMPORT)].map(([, from, bare, dynamic]) => from ?? bare ?? dynamic ?? '');
  const imports = specifiers.map((specifier) =>
    specifier.startsWith('.')
      ? normalize(join(dirname(path), specifier))
      : specifier.replace(/^#?(pdf-lib)(?:\/.*)?$/, '$1'),
  );
  return { path, text, code, imports };
}

const stageOf = (path: string): string => path.split('/')[0] ?? '';
const PURE = MODULES.filter(
  ({ path }) => (STAGES.includes(stageOf(path)) || JOINTS.includes(path)) && !BUILD_SCRIPTS.includes(path),
);
const isPackage = (specifier: string): boolean => !/\.(ts|js|json)$/.test(specifier);

/** Imports of a pure module that it may not have. */
function foreignImports({ path, imports }: Module): string[] {
  const rank = JOINTS.includes(path) ? STAGES.length : STAGES.indexOf(stageOf(path));
  return imports.filter((imported) => {
    const owners = FROM_OUTSIDE[imported];
    if (owners) return !owners.some((owner) => path.startsWith(owner));
    if (isPackage(imported) || BUILD_SCRIPTS.includes(imported)) return true;
    if (FREE.includes(imported) || (JOINTS.includes(path) && JOINTS.includes(imported))) return false;
    const importedRank = STAGES.indexOf(stageOf(imported));
    return importedRank < 0 || importedRank > rank;
  });
}

describe('a stage imports only stages to its left', () => {
  for (const stage of [...STAGES, ...JOINTS]) {
    test(stage, () => {
      const modules = PURE.filter(({ path }) => path === stage || stageOf(path) === stage);
      expect(modules.length).toBeGreaterThan(0);
      expect(modules.flatMap((module) => foreignImports(module).map((name) => `${module.path} → ${name}`))).toEqual([]);
    });
  }

  test('and this test would notice if it did not', () => {
    const imported = (path: string, name: string): string[] =>
      foreignImports({ path, text: '', code: '', imports: [name] });
    expect(imported('calc/mac.ts', 'gate/finding.ts')).toEqual(['gate/finding.ts']);
    expect(imported('print/paper.ts', 'http/app.ts')).toEqual(['http/app.ts']);
    expect(imported('gate/gate.ts', 'pdf-lib')).toEqual(['pdf-lib']);
    expect(imported('pack/summary.ts', 'node:fs')).toEqual(['node:fs']);
    expect(imported('pack/summary.ts', 'print/index.ts')).toEqual(['print/index.ts']);
    expect(imported('print/index.ts', 'pack/summary.ts')).toEqual([]);
  });
});

/** Modules outside a place that import something matching. */
function importersOf(matching: RegExp, outside: RegExp): string[] {
  return MODULES.filter(({ path, imports }) => !outside.test(path) && imports.some((name) => matching.test(name))).map(
    ({ path }) => path,
  );
}

describe('at the edge', () => {
  test('only print/file knows the PDF library', () => expect(importersOf(/^pdf-lib/, /^print\/file\//)).toEqual([]));

  test('only pack/render.ts knows the compiled templates', () =>
    expect(importersOf(/templates\/generated/, /^pack\/render\.ts$/)).toEqual([]));

  test('only the embedded service, the style sheets and the build scripts run on Node', () =>
    expect(
      importersOf(/^node:/, /^embedded\/|^markup\/styles\.ts$/).filter((path) => !BUILD_SCRIPTS.includes(path)),
    ).toEqual([]));

  test('the archive knows nothing of HTTP routes', () =>
    expect(importersOf(/^http\//, /^(http\/|index\.ts$|client\/generate\.ts$|embedded\/command\/)/)).toEqual([]));

  test('the client stands by itself: it knows the service by its description alone, and the service does not know it', () => {
    const known = MODULES.filter(({ path }) => path.startsWith('client/') && !BUILD_SCRIPTS.includes(path));
    expect(known.flatMap(({ imports }) => imports).filter((name) => !name.startsWith('client/'))).toEqual([]);
    expect(importersOf(/^client\//, /^(client|embedded)\//)).toEqual([]);
  });

  test('tables know the record and nothing else, and never come into the Worker', () => {
    const imported = MODULES.filter(({ path }) => path.startsWith('csv/')).flatMap(({ imports }) => imports);
    expect(imported.filter((name) => !/^(csv|visit)\/|^(zod|papaparse)$/.test(name))).toEqual([]);
    expect(importersOf(/^csv\/|^papaparse$/, /^(csv|embedded)\//)).toEqual([]);
  });

  test('what pages and exported folders are written with stands below both', () => {
    const imported = MODULES.filter(({ path }) => path.startsWith('markup/')).flatMap(({ imports }) => imports);
    expect(imported.filter((name) => !/^(markup\/|node:)/.test(name))).toEqual([]);
    expect(importersOf(/^markup\//, /^(markup|embedded)\//)).toEqual([]);
  });

  test('nothing imports the embedded service', () => expect(importersOf(/^embedded\//, /^embedded\//)).toEqual([]));
});

/** Clock, randomness, network, environment and talk: a stage has none, so the same record gives the same bytes. */
const IMPURE =
  /\bDate\.now\b|\bnew Date\(\s*\)|(?<!new )\bDate\(\s*\)|\bMath\.random\b|\bperformance\b|\bgetRandomValues\b|\brandomUUID\b|\bconsole\b|\bfetch\s*\(|\bset(?:Timeout|Interval)\b|\bqueueMicrotask\b|\bprocess\b|\bnavigator\b|\bglobalThis\b|\btoLocale\w*|\bIntl\b|\blocaleCompare\b/;

describe('the stages are pure', () => {
  test('no clock, no randomness, no console, no network, no environment, no locale', () => {
    const found = PURE.flatMap(({ path, code }) =>
      code.split('\n').flatMap((line, index) => (IMPURE.test(line) ? [`${path}:${index + 1} ${line.trim()}`] : [])),
    );
    expect(found).toEqual([]);
  });

  test('and this test would notice if they were not', () => {
    for (const line of [
      'const now = new Date();',
      'x = Math.random()',
      'console.log(1)',
      'await fetch(url)',
      'Date.now()',
    ])
      expect(IMPURE.test(line), line).toBe(true);
    for (const line of ['new Date(0)', 'Date.parse(text)', 'const fetched = 1;'])
      expect(IMPURE.test(line), line).toBe(false);
  });

  test('no module keeps state between calls', () => {
    const found = PURE.filter(({ code }) => /^(export )?(let|var) /m.test(code)).map(({ path }) => path);
    expect(found).toEqual([]);
  });
});

test('nothing is rounded before it is printed: text alone rounds figures, calc and gate round nothing', () => {
  expect(importersOf(/^units\/rounding\.ts$/, /^text\//)).toEqual([]);
  // An altitude code counts whole steps: that is its definition.
  const rounding = PURE.filter(
    ({ path, code }) => /^(calc|gate)\//.test(path) && /\bMath\.round\b|\.to(Fixed|Precision)\(/.test(code),
  );
  expect(rounding.map(({ path }) => path)).toEqual(['calc/surveillance/altitude-code.ts']);
});

describe('results are declared once', () => {
  const isSchema = (path: string): boolean => /^calc\/.*-result\.ts$/.test(path);
  const CORE = MODULES.filter(({ path }) => /^(calc|gate|pack|print|seal)\//.test(path));

  test('by schemas that hold nothing else, of which the stages take the types alone: nothing is parsed, and no page carries them', () => {
    const zodInCalc = MODULES.filter(({ path, imports }) => path.startsWith('calc/') && imports.includes('zod'));
    expect(
      zodInCalc.map(({ path }) => path).filter((path) => !isSchema(path) && path !== 'calc/result-field.ts'),
    ).toEqual([]);
    const takenAsValue = /^(?:import|export) (?!type )[^;]*-result\.ts'/m;
    expect(CORE.filter(({ path, code }) => !isSchema(path) && takenAsValue.test(code)).map(({ path }) => path)).toEqual(
      [],
    );
  });

  test('and calc says nothing in words: it answers codes, and the words stand with gate and pack', () => {
    // Names of States stand in the table that they are allotted in; `not recorded` is a code of the interface.
    const spared = (path: string): boolean => isSchema(path) || path === 'calc/surveillance/state-blocks.ts';
    const calc = CORE.filter(({ path }) => path.startsWith('calc/') && !spared(path));
    const literals = (code: string): string[] =>
      [...code.matchAll(/'([^'\n]*)'|`([^`]*)`/g)].map(([, text, template]) =>
        (text ?? template ?? '').replace(/\$\{[^}]*\}/g, ''),
      );
    const inWords = (code: string): string[] =>
      literals(code).filter((text) => /[A-Za-z,] (?:$|[A-Za-z])/.test(text) && text !== 'not recorded');
    expect(calc.flatMap(({ path, code }) => inWords(code).map((text) => `${path}: ${text}`))).toEqual([]);
    expect(calc.filter(({ imports }) => imports.some((name) => name.startsWith('words/')))).toEqual([]);
    for (const line of ["'Standard pilot alone'", `\`Scale \${id}, error limit\``, `\`Fuel, \${tank}\``])
      expect(inWords(line), line).toHaveLength(1);
  });
});

test('no code asks for a regime by name: regimes are data', () => {
  const names = REGIMES.map(({ id }) => id).join('|');
  const asks = new RegExp(`regime(Named\\(.*\\))?\\.id\\s*[!=]==?|[!=]==?\\s*'(${names})'|case '(${names})'`);
  const found = MODULES.filter(({ path, code }) => path !== 'gate/regimes/table.ts' && asks.test(code)).map(
    ({ path }) => path,
  );
  expect(found).toEqual([]);
});

interface Span {
  name: string;
  lines: number;
}

/** Named functions and methods, by the indentation that the formatter gives: a body ends where its opening line began. */
function functionsOf({ path, code }: Module): Span[] {
  const lines = code.split('\n');
  const opening =
    /^(\s*)(?:export )?(?:default )?(?:(?:async )?function\*? \w+|const \w+ = (?:async )?(?:<.*>)?\(.*=>|(?:private |static |async |override )*#?\w+\(.*)\s*.*[{(]$/;
  return lines.flatMap((line, start) => {
    const match = opening.exec(line);
    if (!match || /^\s*(if|for|while|switch|return|describe|test)\b/.test(line)) return [];
    const indent = match[1] ?? '';
    const end = new RegExp(`^${indent}[})][)\\];,]*$`);
    const length = lines.slice(start + 1).findIndex((later) => end.test(later));
    return [{ name: `${path}:${start + 1}`, lines: length + 2 }];
  });
}

describe('files and functions are short', () => {
  const lengths = MODULES.map(({ path, text }) => ({ path, lines: text.split('\n').length - 1 }));

  test('no file over 300 lines, and half of them under 100', () => {
    expect(lengths.filter(({ lines }) => lines > 300)).toEqual([]);
    const middle = lengths.map(({ lines }) => lines).sort((a, b) => a - b)[Math.floor(lengths.length / 2)];
    expect(middle).toBeLessThan(100);
  });

  test('no function over 60 lines', () => {
    const functions = MODULES.flatMap(functionsOf);
    expect(functions.length).toBeGreaterThan(500);
    expect(functions.filter(({ lines }) => lines > 60)).toEqual([]);
  });

  test('and this test would notice one that is', () => {
    const code = `export function long(\n  a: number,\n): number {\n${'  a += 1;\n'.repeat(58)}}\n`;
    expect(functionsOf({ path: 'x.ts', text: code, code, imports: [] }).map(({ lines }) => lines)).toEqual([62]);
  });

  test('every file is named in kebab-case', () => {
    expect(
      MODULES.map(({ path }) => path).filter(
        (path) => !/^([a-z0-9]+(-[a-z0-9]+)*\/)*[a-z0-9]+(-[a-z0-9]+)*\.ts$/.test(path),
      ),
    ).toEqual([]);
  });

  test('nothing is left to be done, or switched off', () => {
    const found = MODULES.filter(({ text }) =>
      /\b(TODO|FIXME|XXX)\b|@ts-ignore|@ts-expect-error|biome-ignore/.test(text),
    );
    expect(found.map(({ path }) => path)).toEqual([]);
  });
});
