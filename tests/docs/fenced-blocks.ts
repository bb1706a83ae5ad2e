import { readFileSync } from 'node:fs';
import { contentPath } from '../../site/prose.ts';

/** The blocks of a page of the documentation that are meant to be run, in order. */
export function fencedBlocks(name: string): string[] {
  const text = readFileSync(contentPath(name), 'utf8');
  return [...text.matchAll(/^```sh\n(.*?)^```$/gms)].map(([, block = '']) => block);
}
