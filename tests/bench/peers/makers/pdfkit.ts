import type { Maker } from '../maker.ts';
import { drawPage, type Groups, pdfkitDocument } from '../pdfkit-page.ts';

const UNTAGGED: Groups = { leaf: (_role, draw) => draw(), group: (_role, fill) => fill() };

export const maker: Maker = {
  make: (pages) =>
    pdfkitDocument(pages, {}, (document, content) => {
      for (const page of content) drawPage(document, page, UNTAGGED);
    }),
};
