import { readdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { contentPath } from '../../site/build/prose.ts';

/** Names of the texts of the documentation. */
export const CONTENT_PAGES: readonly string[] = readdirSync(dirname(contentPath('start')))
  .map((file) => file.replace(/\.md$/, ''))
  .sort();

const blocksOf = (page: string): RegExpExecArray[] => [
  ...readFileSync(contentPath(page), 'utf8').matchAll(/^```(\w*)\n(.*?)^```$/gms),
];

/** The blocks of a page of the documentation that are written in a language, in order. */
export function fencedBlocks(page: string, language: string): string[] {
  return blocksOf(page).flatMap(([, name, block = '']) => (name === language ? [block] : []));
}

/** The languages of the blocks of a page, each once; empty for a block without a name. */
export function languagesOf(page: string): string[] {
  return [...new Set(blocksOf(page).map(([, name = '']) => name))];
}
