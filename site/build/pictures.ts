// Node script: npm run pictures
// Takes the pictures of the start page and the README again: a page of the demo pack, and the owner's page on a phone.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { bundle } from '../../worker/local/service/bundle.ts';
import { pdfOf, putDemo } from '../../worker/local/service/demo.ts';
import { startEmbedded } from '../../worker/local/service/embedded.ts';
import { freePort } from '../../worker/local/service/free-port.ts';
import { pagePicture } from '../gallery/page-picture.ts';
import { launchBrowser } from './launch-browser.ts';

const PICTURES = join(import.meta.dirname, '../assets/pictures');
const PAGE_WIDTH_PX = 780;
const PHONE = { width: 360, height: 740 };

/** Words found only on the page that the picture shows. */
const SHOWN = /Loading sheet.*Envelope.*Loadings/;

const storage = mkdtempSync(join(tmpdir(), 'slipmark-'));
const secrets = { adminSecret: 'secret-of-the-pictures', sealSecret: 'seal-secret-of-the-pictures' };
const service = await startEmbedded({ script: await bundle(), storage, port: await freePort(18_950), ...secrets });
try {
  const demo = await putDemo(service.origin, secrets, () => undefined);
  await takeOwnerPage(`${service.origin}${demo.ownerPath}`);
  await takePackPage(await pdfOf(service.origin, demo));
} finally {
  await service.stop();
  rmSync(storage, { recursive: true, force: true });
}

async function takeOwnerPage(address: string): Promise<void> {
  const browser = await launchBrowser();
  const context = await browser.newContext({ viewport: PHONE, deviceScaleFactor: 1.5 });
  const page = await context.newPage();
  await page.goto(address);
  await page.evaluate('document.fonts.ready');
  await page.screenshot({ path: join(PICTURES, 'owner-page.png') });
  await browser.close();
}

async function takePackPage(bytes: Uint8Array): Promise<void> {
  const file = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const picture = await pagePicture(file, await pageShown(file), PAGE_WIDTH_PX);
  writeFileSync(join(PICTURES, 'pack-page.png'), picture.toBuffer('image/png'));
}

async function pageShown(file: PDFDocumentProxy): Promise<number> {
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number);
    const { items } = await page.getTextContent();
    if (SHOWN.test(items.map((item) => ('str' in item ? item.str : '')).join(' '))) return number;
  }
  throw new Error('Cannot take the picture: no page of the pack shows the loading sheet');
}
