import { html } from '../../worker/local/markup/html.ts';
import type { Page } from './page.ts';

/** Pages linked at the top of every page. */
const MAIN_PAGES = [
  ['/', 'Start'],
  ['/guide', 'Connect your tool'],
  ['/record', 'Record fields'],
  ['/rules', 'Rules'],
  ['/api', 'API'],
  ['/checks', 'Published examples'],
  ['/formulas', 'Formulas'],
  ['/bench', 'Check a record'],
  ['/workshop', 'Aircraft and visits'],
  ['/verify', 'Verify'],
  ['/search', 'Search'],
] as const;

/** Less used pages, linked at the foot of every page. */
const FOOT_PAGES = [
  ['/typescript', 'TypeScript'],
  ['/python', 'Python'],
  ['/tools', 'Command line and client'],
  ['/weighing-form', 'Weighing form'],
  ['/gallery', 'Sample pack'],
  ['/classes', 'Classes of aircraft'],
  ['/obligations', 'What work requires'],
  ['/authorities', 'For authorities'],
  ['/sources', 'Sources'],
  ['/deploy', 'Host it yourself'],
  ['/moving-house', 'Back-up and move'],
  ['/limits-and-cost', 'Limits and cost'],
  ['/threats', 'Security'],
  ['/cautions', 'Safety and limits'],
  ['/wording', 'Plain words'],
  ['/changelog', 'Changelog'],
] as const;

/** Returns a whole page with the parts common to all pages. */
export function layout({ path, title, description, script, isWide = false, body }: Page): string {
  const links = MAIN_PAGES.map(([address, name]) =>
    address === path
      ? html`<li><a href="${address}" aria-current="page">${name}</a></li>`
      : html`<li><a href="${address}">${name}</a></li>`,
  );
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="description" content="${description}">
<title>${path === '/' ? title : `${title} · Slipmark`}</title>
<link rel="stylesheet" href="/assets/page.css">
${script === undefined ? '' : html`<script type="module" src="/assets/${script}.js"></script>`}
</head>
<body class="docs${isWide ? ' wide' : ''}">
<a class="skip" href="#content">Skip to the content</a>
<header class="masthead">
<p class="brand"><a href="/">Slipmark</a></p>
<nav aria-label="Pages"><ul>${links}</ul></nav>
</header>
<main class="document" id="content" tabindex="-1">
<h1>${title}</h1>
${body}
</main>
<footer class="colophon">
<ul class="foot-pages">${FOOT_PAGES.map(([address, name]) => html`<li><a href="${address}">${name}</a></li>`)}</ul>
<p>Results follow from the record as given. They replace neither the maker’s data nor local rules nor the judgement of a licensed or authorised person, who alone may release.</p>
</footer>
</body>
</html>
`.markup;
}
