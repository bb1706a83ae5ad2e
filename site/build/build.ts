// Node script: node site/build/build.ts
// Writes the static site into site/dist.
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { documentSheet } from '../../worker/local/markup/styles.ts';
import { writeGallery } from '../gallery/write-gallery.ts';
import { writeExamples } from './examples.ts';
import { writeFonts } from './fonts.ts';
import { layout } from './layout.ts';
import { PAGES } from './pages.ts';
import { writeScripts } from './scripts.ts';
import { searchEntries } from './search-index.ts';
import { writeTables } from './tables.ts';

const OUTPUT = join(import.meta.dirname, '../dist');
const ASSETS = join(OUTPUT, 'assets');

const siteSheet = (name: string): string => readFileSync(join(import.meta.dirname, '../styles', `${name}.css`), 'utf8');

/** Stylesheet parts for every page, in this order: the site, the pages of a link, the documents of a pack. */
const STYLES = [
  documentSheet('base'),
  documentSheet('owner'),
  siteSheet('live'),
  documentSheet('document'),
  ...['docs', 'bench', 'shop'].map(siteSheet),
  documentSheet('print'),
];

/** Headers for files that are served without the Worker. */
const HEADERS = `/*
  Content-Security-Policy: default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'
  Referrer-Policy: no-referrer
  X-Content-Type-Options: nosniff
  X-Frame-Options: DENY

/offline.js
  Cache-Control: no-cache

/assets/fonts/*
  Cache-Control: public, max-age=604800
`;

rmSync(OUTPUT, { recursive: true, force: true });
cpSync(join(import.meta.dirname, '../assets'), ASSETS, { recursive: true });
writeFileSync(join(ASSETS, 'page.css'), STYLES.join('\n'));
await writeGallery(join(ASSETS, 'gallery'));
writeTables(join(ASSETS, 'csv'));
await writeFonts(join(ASSETS, 'fonts'));
await writeScripts(OUTPUT);
writeFileSync(join(ASSETS, 'search.json'), JSON.stringify(searchEntries(PAGES)));
writeExamples(join(OUTPUT, 'examples'));
writeFileSync(join(OUTPUT, '_headers'), HEADERS);
for (const page of PAGES) {
  const file = join(OUTPUT, `${page.path === '/' ? '/index' : page.path}.html`);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, layout(page));
}
