import PDFDocument from 'pdfkit';
import { contentOf, LOOK, type PageOfContent } from './content.ts';
import { fontFiles } from './font-files.ts';

type Document = InstanceType<typeof PDFDocument>;

/** Draws within a structure element, or just draws. */
export type Tagging = (
  role: string,
  draw: () => void,
  options?: { alt?: string; scope?: string; bbox?: number[] },
) => void;

/** How a document groups what it draws. */
export interface Groups {
  leaf: Tagging;
  /** Opens and closes groups around rows and tables. */
  group: (role: string, fill: () => void) => void;
}

const { marginPt, columnPt, headingPt, textPt, cellPt, rowPt } = LOOK;

function drawTable(document: Document, { head, rows }: PageOfContent, topPt: number, { leaf, group }: Groups): number {
  const cellWidthPt = columnPt / head.length;
  const drawRow = (texts: readonly string[], yPt: number, isHead: boolean): void =>
    group('TR', () => {
      for (const [i, text] of texts.entries()) {
        const [role, scope] = isHead ? ['TH', 'Column'] : i === 0 ? ['TH', 'Row'] : ['TD', undefined];
        const draw = (): void => {
          document
            .font(role === 'TH' ? 'semibold' : 'regular')
            .fontSize(cellPt)
            .text(text, marginPt + i * cellWidthPt, yPt, {
              width: cellWidthPt - 6,
              align: i > 0 ? 'right' : 'left',
              lineBreak: false,
            });
        };
        leaf(role, draw, scope ? { scope } : {});
      }
    });
  group('Table', () => {
    group('THead', () => drawRow(head, topPt, true));
    group('TBody', () => {
      for (const [i, row] of rows.entries()) drawRow(row, topPt + (i + 1) * rowPt, false);
    });
  });
  return topPt + (rows.length + 1) * rowPt;
}

function drawRules(document: Document, topPt: number, rows: number): void {
  for (let i = 1; i <= rows; i++) {
    const yPt = topPt + i * rowPt - 2;
    document
      .moveTo(marginPt, yPt)
      .lineTo(marginPt + columnPt, yPt)
      .lineWidth(0.4)
      .stroke();
  }
}

function drawPlot(document: Document, { plot }: PageOfContent, topPt: number): void {
  for (const [i, [x, y]] of plot.entries()) {
    if (i === 0) document.moveTo(marginPt + x, topPt + y);
    else document.lineTo(marginPt + x, topPt + y);
  }
  document.lineWidth(1).stroke();
}

/** Draws one page. */
export function drawPage(document: Document, page: PageOfContent, groups: Groups): void {
  document.addPage();
  const { leaf } = groups;
  let yPt: number = marginPt;
  leaf('H1', () => document.font('semibold').fontSize(headingPt).text(page.heading, marginPt, yPt));
  yPt += 26;
  for (const paragraph of page.paragraphs) {
    leaf('P', () => document.font('regular').fontSize(textPt).text(paragraph, marginPt, yPt, { width: columnPt }));
    yPt += 42;
  }
  const afterPt = drawTable(document, page, yPt, groups);
  leaf('Artifact', () => drawRules(document, yPt, page.rows.length + 1));
  leaf('Figure', () => drawPlot(document, page, afterPt), {
    alt: 'Readings',
    bbox: [marginPt, afterPt, marginPt + columnPt, afterPt + 60],
  });
}

function collected(stream: NodeJS.ReadableStream): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = [];
    stream.on('data', (part: Buffer) => parts.push(part));
    stream.on('end', () => resolve(Buffer.concat(parts)));
    stream.on('error', reject);
  });
}

/** A document with the fonts of the bench, its pages drawn by `draw`. */
export function pdfkitDocument(
  pages: number,
  options: Record<string, unknown>,
  draw: (document: Document, content: readonly PageOfContent[]) => void,
): Promise<Buffer> {
  const { regular, semibold } = fontFiles();
  const document = new PDFDocument({ size: 'A4', margin: marginPt, autoFirstPage: false, font: '', ...options });
  const bytes = collected(document);
  document.registerFont('regular', regular).registerFont('semibold', semibold);
  draw(document, contentOf(pages));
  document.end();
  return bytes;
}
