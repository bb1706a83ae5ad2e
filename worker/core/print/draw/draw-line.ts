import { textWidthPt } from '../fonts/face.ts';
import type { Item, Piece } from '../measure/item.ts';
import type { Tag } from '../measure/tag.ts';
import type { Canvas } from './canvas.ts';

/** A link on a page, in PDF coordinates. */
export interface PlacedLink {
  tag: Tag;
  target: string;
  text: string;
  box: readonly [number, number, number, number];
}

type LineItem = Extract<Item, { kind: 'line' }>;

// Page numbers are known by now; they fill the space reserved for them, and the following pieces move up.
function withPageNumbers(line: LineItem, startPage: Readonly<Record<string, number>>): readonly Piece[] {
  if (!line.pieces.some((piece) => piece.pageOf !== null)) return line.pieces;
  return line.pieces.map((piece) => {
    if (piece.pageOf === null) return piece;
    const page = startPage[piece.pageOf];
    if (page === undefined)
      throw new Error(`Cannot print: data-page-of must name a document: current value is "${piece.pageOf}"`);
    const text = String(page);
    return { ...piece, text, widthPt: textWidthPt(text, piece.style.face, piece.style.sizePt) };
  });
}

/** Draws a line of text with its left end at a point of the page, and returns its links. */
export function drawLine(
  canvas: Canvas,
  line: LineItem,
  xPt: number,
  yPt: number,
  startPage: Readonly<Record<string, number>>,
): PlacedLink[] {
  const pieces = withPageNumbers(line, startPage);
  const usedPt = pieces.reduce((total, piece) => total + piece.widthPt, 0);
  const share = { left: 0, centre: 0.5, right: 1 }[line.align];
  let atPt = xPt + (line.widthPt - usedPt) * share;
  const links: PlacedLink[] = [];
  let inText = false;
  let tag: Tag | null | undefined;
  for (const piece of pieces) {
    const { face, sizePt, risePt, leadingPt } = piece.style;
    if (!inText || piece.tag !== tag) {
      if (inText) canvas.endText();
      canvas.enter(piece.tag);
      canvas.beginText(atPt, yPt);
      inText = true;
      tag = piece.tag;
    }
    canvas.showText(piece.text, face, sizePt, risePt);
    if (piece.link !== null && piece.tag) {
      const box = [atPt, yPt - leadingPt * 0.3, atPt + piece.widthPt, yPt + leadingPt * 0.7] as const;
      links.push({ tag: piece.tag, target: piece.link, text: piece.text.trim(), box });
    }
    atPt += piece.widthPt;
  }
  if (inText) canvas.endText();
  return links;
}
