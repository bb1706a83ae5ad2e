import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';
import { REGIMES } from '../worker/core/gate/regimes/table.ts';

const WORKER = `${import.meta.dirname}/../worker`;

/** Stages from left to right: each may import itself and what stands to its left. */
const STAGES = ['units', 'text', 'record', 'calc', 'gate', 'pack', 'print', 'seal', 'pipeline'].map(
  (stage) => `core/${stage}`,
);

/** Free to every stage: bounds and forms of names, without behaviour. */
const FREE = ['core/limits.ts', 'core/patterns.ts'];

/** The door to the stages, so it may see all of them, and nothing of the edge. */
const JOINTS = ['core/core.ts'];

/** What a stage may take from outside, and in which files or folders. Everything else is its own. */
const FROM_OUTSIDE: Readonly<Record<string, readonly string[]>> = {
  zod: [
    'core/record/',
    'core/calc/',
    'core/pack/owner-facts-schema.ts',
    'core/pack/summary.ts',
    'core/pipeline/results-schema.ts',
    'core/pipeline/past.ts',
  ],
  'make-plural/pluralCategories': ['core/text/'],
  jose: ['core/seal/'],
  geomagnetism: ['core/calc/compass/'],
  'astronomy-engine': ['core/calc/clock/'],
  handlebars: ['core/pack/render.ts'],
  'handlebars/runtime.js': ['core/pack/render.ts'],
  '../templates/generated/templates.js': ['core/pack/render.ts'],
  parse5: ['core/print/parse/'],
  'pdf-lib': ['core/print/file/'],
  pako: ['core/print/file/deflate.ts', 'core/print/bytes/inflate.ts'],
};

/** Run on the maker's machine before anything is deployed; no stage imports it. */
const BUILD_SCRIPTS = [
  ...['build', 'catalogue', 'compile-all', 'compile-message', 'house-formats', 'read-format'].map(
    (name) => `core/text/build/${name}.ts`,
  ),
  'core/print/fonts/build.ts',
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

const stageOf = (path: string): string => path.split('/').slice(0, 2).join('/');
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
    expect(imported('core/calc/mac.ts', 'core/gate/finding.ts')).toEqual(['core/gate/finding.ts']);
    expect(imported('core/print/paper.ts', 'edge/http/app.ts')).toEqual(['edge/http/app.ts']);
    expect(imported('core/gate/gate.ts', 'pdf-lib')).toEqual(['pdf-lib']);
    expect(imported('core/pack/summary.ts', 'node:fs')).toEqual(['node:fs']);
    expect(imported('core/pack/summary.ts', 'core/print/index.ts')).toEqual(['core/print/index.ts']);
    expect(imported('core/print/index.ts', 'core/pack/summary.ts')).toEqual([]);
  });
});

/** Modules outside a place that import something matching. */
function importersOf(matching: RegExp, outside: RegExp): string[] {
  return MODULES.filter(({ path, imports }) => !outside.test(path) && imports.some((name) => matching.test(name))).map(
    ({ path }) => path,
  );
}

const wing = (name: string): Module[] => MODULES.filter(({ path }) => path.startsWith(`${name}/`));

describe('four wings', () => {
  const importedBy = (name: string): string[] =>
    wing(name)
      .filter(({ path }) => !BUILD_SCRIPTS.includes(path))
      .flatMap(({ imports }) => imports);

  test('core imports nothing of edge, local, client or Node', () => {
    expect(wing('core').length).toBeGreaterThan(500);
    expect(importedBy('core').filter((name) => /^(edge|local|client)\/|^node:/.test(name))).toEqual([]);
  });

  test('edge imports nothing of local, client or Node', () =>
    expect(importedBy('edge').filter((name) => /^(local|client)\/|^node:/.test(name))).toEqual([]));

  test('the client stands alone: it knows the service by its description, and the service does not know it', () => {
    expect(importedBy('client').filter((name) => !name.startsWith('client/'))).toEqual([]);
    expect(importersOf(/^client\//, /^(client|local)\//)).toEqual([]);
  });

  test('nothing imports local but itself', () => expect(importersOf(/^local\//, /^local\//)).toEqual([]));
});

describe('within the wings', () => {
  test('only print/file knows the PDF library', () =>
    expect(importersOf(/^pdf-lib/, /^core\/print\/file\//)).toEqual([]));

  test('only pack/render.ts knows the compiled templates', () =>
    expect(importersOf(/templates\/generated/, /^core\/pack\/render\.ts$/)).toEqual([]));

  test('the reader of foreign PDFs has one door', () =>
    expect(importersOf(/^core\/print\/import\/(?!index\.ts$)/, /^core\/print\/import\//)).toEqual([]));

  test('the archive knows nothing of HTTP routes', () =>
    expect(importersOf(/^edge\/http\//, /^(edge\/http\/|index\.ts$|client\/generate\.ts$|local\/command\/)/)).toEqual(
      [],
    ));

  test('tables know the record and nothing else', () => {
    const known = /^(local\/tables|core\/record|core\/text)\/|^(zod|papaparse)$/;
    expect(
      wing('local/tables')
        .flatMap(({ imports }) => imports)
        .filter((name) => !known.test(name)),
    ).toEqual([]);
    expect(importersOf(/^papaparse$/, /^local\/tables\//)).toEqual([]);
  });

  test('what pages and exported folders are written with stands below both', () =>
    expect(
      wing('local/markup')
        .flatMap(({ imports }) => imports)
        .filter((name) => !/^(local\/markup\/|node:)/.test(name)),
    ).toEqual([]));
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
  expect(importersOf(/^core\/units\/rounding\.ts$/, /^core\/text\//)).toEqual([]);
  // An altitude code counts whole steps: that is its definition. Swapped digits are those that a display showed.
  const rounding = PURE.filter(
    ({ path, code }) => /^core\/(calc|gate)\//.test(path) && /\bMath\.round\b|\.to(Fixed|Precision)\(/.test(code),
  );
  expect(rounding.map(({ path }) => path)).toEqual([
    'core/calc/surveillance/altitude-code.ts',
    'core/calc/weighing/causes/digit-slips.ts',
  ]);
});

describe('results are declared once', () => {
  const isSchema = (path: string): boolean => /^core\/calc\/.*-result\.ts$/.test(path);
  const CORE = MODULES.filter(({ path }) => /^core\/(calc|gate|pack|print|seal)\//.test(path));

  test('by schemas that hold nothing else, of which the stages take the types alone: nothing is parsed, and no page carries them', () => {
    const zodInCalc = MODULES.filter(({ path, imports }) => path.startsWith('core/calc/') && imports.includes('zod'));
    expect(
      zodInCalc
        .map(({ path }) => path)
        .filter((path) => !isSchema(path) && path !== 'core/calc/numbers/result-field.ts'),
    ).toEqual([]);
    const takenAsValue = /^(?:import|export) (?!type )[^;]*-result\.ts'/m;
    expect(CORE.filter(({ path, code }) => !isSchema(path) && takenAsValue.test(code)).map(({ path }) => path)).toEqual(
      [],
    );
  });

  test('and calc says nothing in words: it answers codes, and the words stand in text', () => {
    // Names of States are in the tables of their blocks; `not recorded` is a code of the interface.
    const tables = ['state-blocks', 'wider-blocks'].map((name) => `core/calc/surveillance/${name}.ts`);
    const spared = (path: string): boolean => isSchema(path) || tables.includes(path);
    const calc = CORE.filter(({ path }) => path.startsWith('core/calc/') && !spared(path));
    const literals = (code: string): string[] =>
      [...code.matchAll(/'([^'\n]*)'|`([^`]*)`/g)].map(([, text, template]) =>
        (text ?? template ?? '').replace(/\$\{[^}]*\}/g, ''),
      );
    const inWords = (code: string): string[] =>
      literals(code).filter((text) => /[A-Za-z,] (?:$|[A-Za-z])/.test(text) && text !== 'not recorded');
    expect(calc.flatMap(({ path, code }) => inWords(code).map((text) => `${path}: ${text}`))).toEqual([]);
    expect(calc.filter(({ imports }) => imports.some((name) => name.startsWith('core/text/')))).toEqual([]);
    for (const line of ["'Standard pilot alone'", `\`Scale \${id}, error limit\``, `\`Fuel, \${tank}\``])
      expect(inWords(line), line).toHaveLength(1);
  });
});

test('no code asks for a regime by name: regimes are data', () => {
  const names = REGIMES.map(({ id }) => id).join('|');
  const asks = new RegExp(`regime(Named\\(.*\\))?\\.id\\s*[!=]==?|[!=]==?\\s*'(${names})'|case '(${names})'`);
  const found = MODULES.filter(({ path, code }) => path !== 'core/gate/regimes/table.ts' && asks.test(code)).map(
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
