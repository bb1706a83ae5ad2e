import { LIMITS } from '../../limits.ts';
import { fault } from '../../text/faults.ts';
import { dictionaryOf, isArray, isReference, type PdfDictionary, type PdfObject } from '../pdf-object.ts';
import { damaged, RefusedError } from '../refusal.ts';
import type { PdfFile } from './pdf-file.ts';

// Passed down the page tree (ISO 32000-1, 7.7.3.4).
const INHERITED = ['Resources', 'MediaBox', 'CropBox', 'Rotate'] as const;

// Real trees have a handful of levels.
const DEEPEST = 32;

/** The pages in order, each with what it inherits. Refuses none, too many, and a tree that leads nowhere or back to itself. */
export function pagesOf(file: PdfFile, catalogue: PdfDictionary): PdfDictionary[] {
  const pages: PdfDictionary[] = [];
  const seen = new Set<number>();
  const visit = (node: PdfObject, above: PdfDictionary, depth: number): void => {
    if (depth > DEEPEST) throw damaged(fault('objects-nested-too-deeply'));
    if (isReference(node)) {
      if (seen.has(node.number)) throw damaged(fault('pages-lead-back-themselves'));
      seen.add(node.number);
    }
    const own = dictionaryOf(file.resolve(node));
    const inherited = INHERITED.flatMap((key): [string, PdfObject][] => {
      const value = own.get(key) ?? above.get(key);
      return value === undefined ? [] : [[key, value]];
    });
    const whole = new Map([...own, ...inherited]);
    const kids = file.resolve(own.get('Kids'));
    if (isArray(kids)) {
      for (const kid of kids) visit(kid, whole, depth + 1);
      return;
    }
    if (own.size === 0) throw damaged(fault('page-missing'));
    if (pages.length === LIMITS.annexPages)
      throw new RefusedError('too-large', fault('more-than-pages', { annexPages: LIMITS.annexPages }));
    pages.push(whole);
  };
  visit(catalogue.get('Pages') ?? null, new Map(), 0);
  return pages;
}
