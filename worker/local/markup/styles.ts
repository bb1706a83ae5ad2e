import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Stylesheets of documents, for the site and for exported folders. */
export const DOCUMENT_SHEETS = ['base', 'owner', 'document', 'print'] as const;
export type DocumentSheet = (typeof DOCUMENT_SHEETS)[number];

export const documentSheet = (name: DocumentSheet): string =>
  readFileSync(join(import.meta.dirname, 'styles', `${name}.css`), 'utf8');
