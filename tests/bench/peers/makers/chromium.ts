import type { Browser } from 'playwright-core';
import { launchBrowser } from '../../../../site/build/launch-browser.ts';
import { LOOK } from '../content.ts';
import { fontFiles } from '../font-files.ts';
import { htmlDocuments } from '../html-content.ts';
import type { Maker } from '../maker.ts';

const { regular, semibold } = fontFiles();
const face = (weight: number, file: Buffer): string =>
  `@font-face{font-family:Text;font-weight:${weight};src:url(data:font/ttf;base64,${file.toString('base64')})}`;
const STYLE = `${face(400, regular)}${face(600, semibold)}
@page{size:A4;margin:${LOOK.marginPt}pt}body{font:${LOOK.textPt}pt Text;margin:0}h1{font-size:${LOOK.headingPt}pt;font-weight:600}
article{break-after:page}table{width:100%;border-collapse:collapse;font-size:${LOOK.cellPt}pt;line-height:10pt}.num{text-align:right}
th{text-align:left;font-weight:600}td,th{border-bottom:.5pt solid;padding:1pt 3pt}figure{margin:0}`;

let browser: Browser | undefined;

/** The browser is kept open between documents, as a server would. */
export const maker: Maker = {
  make: async (pages) => {
    browser ??= await launchBrowser();
    const page = await browser.newPage();
    const body = htmlDocuments(pages)
      .map(({ html }) => html)
      .join('');
    await page.setContent(`<!doctype html><html lang="en"><title>Bench</title><style>${STYLE}</style>${body}</html>`);
    await page.evaluate('document.fonts.ready');
    const bytes = await page.pdf({ preferCSSPageSize: true, tagged: true, outline: true });
    return bytes;
  },
  close: async () => browser?.close(),
};
