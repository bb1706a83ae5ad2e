import { html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

/** Page that checks the seal of a dropped file in the browser. */
export const verify: Page = {
  path: '/verify',
  title: 'Verify a pack',
  description: 'Check whether a pack is unchanged, who sealed it, and whether it is still current',
  script: 'verify',
  body: html`${prose('verify')}
<div class="drop" id="verify">
<p><label for="file">The pack, a PDF file: choose it or drop it here</label></p>
<p><input id="file" type="file" accept="application/pdf,.pdf"></p>
</div>
<div class="verdict" id="verdict" role="status" hidden></div>
${prose('verify-offline')}`,
};
