import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { generatedTexts, type Texts } from './generated-language.ts';

const ROOT = join(import.meta.dirname, '../../..');
const TEXT = 'worker/core/text';
/** Croatian has three forms of a plural, and Unicode CLDR knows how it writes numbers and dates. Its words here are none of Croatian. */
const LANGUAGE = 'hr';

let scratch: string;

const node = join(ROOT, 'node_modules/.bin/node');

/** The project as it stands, with one folder and one line more. */
function projectWithLanguage(): string {
  const folder = mkdtempSync(join(tmpdir(), 'slipmark-language-'));
  const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard', '-z'], { cwd: ROOT, encoding: 'utf8' });
  for (const path of listed.split('\0').filter((name) => name !== '' && !name.startsWith('fixtures/kept/'))) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    cpSync(join(ROOT, path), join(folder, path), { errorOnExist: false });
  }
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  const messages = join(folder, TEXT, 'messages');
  mkdirSync(join(messages, LANGUAGE));
  for (const file of readdirSync(join(messages, 'en'))) {
    const english = JSON.parse(readFileSync(join(messages, 'en', file), 'utf8')) as Texts;
    const generated = generatedTexts(english);
    writeFileSync(join(messages, LANGUAGE, file), JSON.stringify(generated, null, 2));
  }
  const list = join(folder, TEXT, 'languages.ts');
  const code = readFileSync(list, 'utf8');
  writeFileSync(
    list,
    code.replace("export const LANGUAGES = ['en', 'de']", `export const LANGUAGES = ['en', 'de', '${LANGUAGE}']`),
  );
  return folder;
}

/** Runs something in the scratch project; what it printed is the message when it fails. */
function run(...args: readonly string[]): void {
  const { PATH = '', HOME = '' } = process.env;
  const environment = { PATH: `${join(ROOT, 'node_modules/.bin')}:${PATH}`, HOME, CI: '1', ANY_VISITS: '60' };
  const { status, stdout, stderr } = spawnSync(node, args, { cwd: scratch, encoding: 'utf8', env: environment });
  expect(status, `${args.join(' ')}\n${stdout}\n${stderr}`).toBe(0);
}

const vitest = (project: string, ...paths: readonly string[]): void =>
  run('node_modules/vitest/vitest.mjs', 'run', '--config', 'tests/vitest.config.ts', '--project', project, ...paths);

beforeAll(() => {
  scratch = projectWithLanguage();
  for (const script of [
    'worker/core/text/build/build.ts',
    'templates/compile.ts',
    'worker/core/print/fonts/build.ts',
    'worker/client/generate.ts',
    'site/build/build.ts',
  ])
    run(script);
}, 300_000);

afterAll(() => rmSync(scratch, { recursive: true, force: true }));

test('a language that a folder and a line add is complete, and packs in it fit their pages', () => {
  vitest(
    'core',
    'tests/core/text/catalogues.test.ts',
    'tests/core/text/number-format.test.ts',
    'tests/core/pack/every-language.test.ts',
    'tests/core/pack/any-visit.test.ts',
  );
}, 600_000);

test('and its pages in the browser are in it, fit a phone and have no accessibility defect', () => {
  vitest('browser', 'tests/browser/every-language.test.ts');
}, 600_000);
