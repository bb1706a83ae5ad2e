import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '../../../..');

const tracked = (...patterns: readonly string[]): string[] =>
  execFileSync('git', ['ls-files', '--', ...patterns], { cwd: ROOT, encoding: 'utf8' })
    .split('\n')
    .filter((path) => path !== '');

const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

/** Texts of one kind, each alone. */
export type Texts = readonly string[];

const stringsIn = (value: unknown): string[] =>
  typeof value === 'string' ? [value] : Object.values(value as object).flatMap(stringsIn);

/** What readers read, and what maintainers do. */
export function textsByKind(): Readonly<Record<'messages' | 'documentation' | 'code', Texts>> {
  const english = tracked('worker/core/text/messages/en/*.json').flatMap((path) => stringsIn(JSON.parse(read(path))));
  const documentation = tracked('README.md', 'DEVELOPERS.md', 'site/content/*.md')
    // The guide has to show what it bans.
    .filter((path) => !path.endsWith('wording.md'))
    .map(read);
  const code = tracked('worker/*.ts', 'site/*.ts', 'templates/*.ts').map(read);
  return { messages: english, documentation, code };
}
