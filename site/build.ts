import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { PROBLEM_KINDS } from '../worker/http/problem-kinds.ts';
import { type Page, pageHtml } from './page.ts';

/** Builds the static site into `site/dist`: its assets, the first page, and one page for each kind of problem. */
const OUTPUT = join(import.meta.dirname, 'dist');

const index: Page = {
  path: 'index.html',
  title: 'Slipmark',
  html: `<p>Turns the structured record of a light-aircraft workshop visit into a computed, checked and sealed release pack.</p>
<ul>
<li><a href="/v1/openapi.json">Interface description (OpenAPI 3.1)</a></li>
<li><a href="/v1/schema/visit.json">Schema of the visit record</a></li>
</ul>`,
};

const problems = Object.entries(PROBLEM_KINDS).map(([kind, { status, title }]): Page => {
  const html = `<p>Answered with status ${status} and <code>"type": "/problems/${kind}"</code>. The <code>detail</code> says what is
wrong, and <code>findings</code> lists every defect with its place and what to do.</p>`;
  return { path: `problems/${kind}.html`, title, html };
});

/** Headers for what is served without running the Worker. */
const HEADERS = `/*
  Content-Security-Policy: default-src 'none'; style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'
  Referrer-Policy: no-referrer
  X-Content-Type-Options: nosniff
  X-Frame-Options: DENY
`;

rmSync(OUTPUT, { recursive: true, force: true });
cpSync(join(import.meta.dirname, 'assets'), join(OUTPUT, 'assets'), { recursive: true });
writeFileSync(join(OUTPUT, '_headers'), HEADERS);
for (const page of [index, ...problems]) {
  mkdirSync(dirname(join(OUTPUT, page.path)), { recursive: true });
  writeFileSync(join(OUTPUT, page.path), pageHtml(page));
}
