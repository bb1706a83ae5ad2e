import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PROBLEM_KINDS } from '../../worker/edge/http/problem-kinds.ts';
import { ROUTES } from '../../worker/edge/http/routes.ts';

const DIST = join(import.meta.dirname, '../../site/dist');
const served = new Set<string>(ROUTES.filter(([method]) => method === 'GET').map(([, path]) => path));

/** Every page of the built site, by its address. */
const pages = new Map(
  globSync('**/*.html', { cwd: DIST }).map((file) => [addressOf(file), readFileSync(join(DIST, file), 'utf8')]),
);

function addressOf(file: string): string {
  const path = file.replaceAll('\\', '/').replace(/\.html$/, '');
  return path === 'index' ? '/' : `/${path}`;
}

const idsIn = (html: string): string[] => [...html.matchAll(/ id="([^"]+)"/g)].map(([, id = '']) => id);
const linksIn = (html: string): string[] => [...html.matchAll(/ (?:href|src)="([^"]+)"/g)].map(([, link = '']) => link);

function isGood(from: string, link: string): boolean {
  const [path = '', anchor] = link.split('#');
  const page = pages.get(path === '' ? from : path);
  if (page === undefined) return served.has(path) || existsSync(join(DIST, path));
  return anchor === undefined || idsIn(page).includes(anchor);
}

describe('the built site', () => {
  test('has a page for each kind of problem, at the address that its type names', () => {
    for (const kind of Object.keys(PROBLEM_KINDS)) expect([...pages.keys()]).toContain(`/problems/${kind}`);
  });

  test('loads nothing from elsewhere', () => {
    const foreign = [...pages].flatMap(([, html]) => linksIn(html).filter((link) => !/^[/#]/.test(link)));
    expect(foreign).toEqual([]);
  });

  test.each([...pages.keys()])('%s leads only to places that exist', (address) => {
    const links = new Set(linksIn(pages.get(address) ?? ''));
    expect([...links].filter((link) => !isGood(address, link))).toEqual([]);
  });

  test.each([...pages.keys()])('%s gives no anchor twice', (address) => {
    const ids = idsIn(pages.get(address) ?? '');
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });
});
