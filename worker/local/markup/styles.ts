import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Style sheets of documents, on the site and in exported folders alike. */
export const DOCUMENT_SHEETS = ['base', 'owner', 'document', 'print'] as const;
export type DocumentSheet = (typeof DOCUMENT_SHEETS)[number];

export const documentSheet = (name: DocumentSheet): string =>
  readFileSync(join(import.meta.dirname, 'styles', `${name}.css`), 'utf8');
