import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from './page.ts';
import { prose } from './prose.ts';

type ShopPage = Omit<Page, 'body' | 'isWide'> & {
  /** Name of the text under the title. */
  text: string;
  /** Content shown once there is a key. */
  work: Html;
};

/** Returns a page of a workshop: it requires a key once for a tab, and works with the service. */
export function shopPage({ text, work, ...page }: ShopPage): Page {
  return {
    ...page,
    isWide: true,
    body: html`${prose(text)}
<noscript><p>This page works in the browser and needs scripts. <a href="/guide">The API</a> does the same.</p></noscript>
<form class="key" id="key-form" autocomplete="off" hidden>
<div class="tools">
<label for="key">Key of the workshop <input id="key" type="password" required autocomplete="off" spellcheck="false"></label>
<button type="submit">Work with this key</button>
</div>
<p class="small">It stays in this tab and is forgotten with it.</p>
</form>
<p class="problem" id="problem" role="alert" hidden></p>
<p class="busy" id="busy" role="status" hidden></p>
<div id="work" hidden>
${work}
</div>
<p class="tools"><button type="button" id="forget-key" hidden>Forget the key</button></p>`,
  };
}
