import { Document, Font, Page, Polyline, renderToBuffer, Svg, Text, View } from '@react-pdf/renderer';
import { createElement as e } from 'react';
import { contentOf, LOOK, type PageOfContent } from '../content.ts';
import { fontFiles } from '../font-files.ts';
import type { Maker } from '../maker.ts';

const source = (file: Buffer): string => `data:font/ttf;base64,${file.toString('base64')}`;
const { regular, semibold } = fontFiles();
Font.register({ family: 'Text', fonts: [{ src: source(regular) }, { src: source(semibold), fontWeight: 600 }] });

const row = { flexDirection: 'row', borderBottomWidth: 0.4, height: LOOK.rowPt } as const;
const cell = (texts: readonly string[], isHead: boolean) =>
  texts.map((text, i) =>
    e(
      Text,
      { key: i, style: { flex: 1, textAlign: i > 0 ? 'right' : 'left', fontWeight: isHead || i === 0 ? 600 : 400 } },
      text,
    ),
  );

function page({ heading, paragraphs, head, rows, plot }: PageOfContent, key: number) {
  return e(
    Page,
    { key, size: 'A4', style: { fontFamily: 'Text', fontSize: LOOK.textPt, padding: LOOK.marginPt } },
    e(Text, { style: { fontSize: LOOK.headingPt, fontWeight: 600 } }, heading),
    ...paragraphs.map((text, i) => e(Text, { key: `p${i}`, style: { marginTop: 6 } }, text)),
    e(
      View,
      { style: { fontSize: LOOK.cellPt, marginTop: 6 } },
      e(View, { style: row }, ...cell(head, true)),
      ...rows.map((texts, i) => e(View, { key: i, style: row }, ...cell(texts, false))),
    ),
    e(
      Svg,
      { viewBox: '0 0 400 60', style: { height: 60 } },
      e(Polyline, { points: plot.map((point) => point.join(',')).join(' '), stroke: 'black', fill: 'none' }),
    ),
  );
}

/** react-pdf writes no tags. */
export const maker: Maker = {
  make: (pages) => renderToBuffer(e(Document, { title: 'Bench' }, ...contentOf(pages).map(page))),
};
