import type { Maker } from '../maker.ts';
import { drawPage, type Groups, pdfkitDocument } from '../pdfkit-page.ts';

const OPTIONS = {
  subset: 'PDF/A-3a',
  pdfVersion: '1.7',
  tagged: true,
  lang: 'en',
  displayTitle: true,
  info: { Title: 'Bench' },
};

export const maker: Maker = {
  make: (pages) =>
    pdfkitDocument(pages, OPTIONS, (document, content) => {
      const root = document.struct('Document');
      document.addStructure(root);
      let parent = root;
      const groups: Groups = {
        leaf: (role, draw, options = {}) => {
          if (role === 'Artifact') {
            document.markContent('Artifact', { type: 'Layout' });
            draw();
            document.endMarkedContent();
          } else parent.add(document.struct(role, options, draw));
        },
        group: (role, fill) => {
          const outer = parent;
          const inner = document.struct(role);
          outer.add(inner);
          parent = inner;
          fill();
          inner.end();
          parent = outer;
        },
      };
      for (const page of content) drawPage(document, page, groups);
      root.end();
    }),
};
