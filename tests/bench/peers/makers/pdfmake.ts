import pdfmake from 'pdfmake';
import { contentOf, LOOK } from '../content.ts';
import { fontFiles } from '../font-files.ts';
import type { Maker } from '../maker.ts';

const { regular, semibold } = fontFiles();
pdfmake.virtualfs.writeFileSync('regular.ttf', regular);
pdfmake.virtualfs.writeFileSync('semibold.ttf', semibold);
pdfmake.setFonts({ Text: { normal: 'regular.ttf', bold: 'semibold.ttf' } });
pdfmake.setUrlAccessPolicy(() => false);
pdfmake.setLocalAccessPolicy(() => false);

/** pdfmake writes no tags. */
export const maker: Maker = {
  make: (pages) => {
    const content = contentOf(pages).map(({ heading, paragraphs, head, rows, plot }, i) => [
      { text: heading, fontSize: LOOK.headingPt, bold: true, ...(i > 0 ? { pageBreak: 'before' } : {}) },
      ...paragraphs.map((text) => ({ text, margin: [0, 3, 0, 3] })),
      {
        table: {
          headerRows: 1,
          widths: head.map(() => '*'),
          body: [
            head.map((text) => ({ text, bold: true })),
            ...rows.map(([name, ...readings]) => [
              { text: name, bold: true },
              ...readings.map((text) => ({ text, alignment: 'right' })),
            ]),
          ],
        },
        fontSize: LOOK.cellPt,
        layout: 'lightHorizontalLines',
      },
      { canvas: [{ type: 'polyline', points: plot.map(([x, y]) => ({ x, y })) }] },
    ]);
    const pageMargins = [LOOK.marginPt, 30, LOOK.marginPt, 30];
    return pdfmake
      .createPdf({
        pageSize: 'A4',
        pageMargins,
        content,
        defaultStyle: { font: 'Text', fontSize: LOOK.textPt, lineHeight: 0.8 },
      })
      .getBuffer();
  },
};
