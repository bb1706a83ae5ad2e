import { jsPDF } from 'jspdf';
import { autoTable } from 'jspdf-autotable';
import { contentOf, LOOK } from '../content.ts';
import { fontFiles } from '../font-files.ts';
import type { Maker } from '../maker.ts';

const { regular, semibold } = fontFiles();

/** jsPDF writes no tags. */
export const maker: Maker = {
  make: async (pages) => {
    const document = new jsPDF({ unit: 'pt', format: 'a4', compress: true, putOnlyUsedFonts: true });
    for (const [style, file] of [
      ['normal', regular],
      ['bold', semibold],
    ] as const) {
      document.addFileToVFS(`${style}.ttf`, file.toString('base64'));
      document.addFont(`${style}.ttf`, 'Text', style);
    }
    const { marginPt, columnPt, cellPt } = LOOK;
    for (const [i, { heading, paragraphs, head, rows, plot }] of contentOf(pages).entries()) {
      if (i > 0) document.addPage();
      document.setFont('Text', 'bold').setFontSize(LOOK.headingPt).text(heading, marginPt, marginPt);
      document.setFont('Text', 'normal').setFontSize(LOOK.textPt);
      for (const [n, text] of paragraphs.entries()) {
        document.text(document.splitTextToSize(text, columnPt), marginPt, marginPt + 26 + n * 42);
      }
      autoTable(document, {
        startY: marginPt + 110,
        margin: marginPt,
        head: [[...head]],
        body: rows.map((row) => [...row]),
        theme: 'plain',
        styles: { font: 'Text', fontSize: cellPt, cellPadding: 1.5, lineWidth: { bottom: 0.4 } },
        columnStyles: Object.fromEntries(
          head.map((_, n) => [n, n > 0 ? { halign: 'right' as const } : { fontStyle: 'bold' as const }]),
        ),
      });
      const [first = [0, 0], ...others] = plot;
      let from = first;
      for (const to of others) {
        document.line(marginPt + from[0], 700 + from[1], marginPt + to[0], 700 + to[1]);
        from = to;
      }
    }
    return new Uint8Array(document.output('arraybuffer'));
  },
};
