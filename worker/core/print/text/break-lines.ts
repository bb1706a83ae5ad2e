import { kerning, textWidthPt } from '../fonts/face.ts';
import type { Piece } from '../measure/item.ts';
import type { Word } from './words.ts';

/** Pieces of one line and their width, without the space that ends it. */
export interface Line {
  pieces: Piece[];
  widthPt: number;
}

// Measured widths are sums of rounded advances; a column as wide as its longest word must fit it.
const TOLERANCE_PT = 0.01;

// Preferred break positions in an over-long word, if in the last third of the part that fits.
const PREFERRED = /[-\u2010-\u2014/.,;:_=+@]/;

function cutPiece(whole: Piece, length: number): [Piece, Piece] {
  const { text, style, widthPt } = whole;
  const head = text.slice(0, length);
  const headPt = textWidthPt(head, style.face, style.sizePt);
  // Measuring the rest of a long word again at every line would take quadratic time; only the kerning at the cut is
  // lost.
  const lost = length > 0 ? kerning(style.face, text.charCodeAt(length - 1), text.charCodeAt(length)) : 0;
  const restPt = widthPt - headPt - (lost * style.sizePt) / 1000;
  return [
    { ...whole, text: head, widthPt: headPt },
    { ...whole, text: text.slice(length), widthPt: restPt },
  ];
}

function fittingLength(whole: Piece, widthPt: number, atLeast: number): number {
  const { face, sizePt } = whole.style;
  let length = 0;
  let usedPt = 0;
  while (length < whole.text.length) {
    usedPt += textWidthPt(whole.text.charAt(length), face, sizePt);
    if (usedPt > widthPt + TOLERANCE_PT && length >= atLeast) break;
    length++;
  }
  for (let at = length; at > (length * 2) / 3; at--) {
    if (PREFERRED.test(whole.text.charAt(at - 1)) && length < whole.text.length) return at;
  }
  return length;
}

// Divides a word that no line can fit: as much as fits, and the rest.
function cutWord(word: Word, widthPt: number): [Word, Word] {
  const head: Piece[] = [];
  let roomPt = widthPt;
  for (const [i, each] of word.pieces.entries()) {
    if (each.widthPt <= roomPt + TOLERANCE_PT) {
      head.push(each);
      roomPt -= each.widthPt;
      continue;
    }
    const [first, second] = cutPiece(each, fittingLength(each, roomPt, head.length === 0 ? 1 : 0));
    const tail = [second, ...word.pieces.slice(i + 1)].filter((piece) => piece.text !== '');
    return [
      wordFrom(first.text === '' ? head : [...head, first]),
      { ...word, ...wordFrom(tail), space: word.space, endsLine: word.endsLine },
    ];
  }
  return [word, wordFrom([])];
}

function wordFrom(pieces: Piece[]): Word {
  return { pieces, widthPt: pieces.reduce((total, piece) => total + piece.widthPt, 0), space: null, endsLine: false };
}

function append(line: Line, added: Piece): void {
  const last = line.pieces.at(-1);
  const alike = last && last.tag === added.tag && last.style === added.style && last.link === added.link;
  if (last && alike && last.pageOf === null && added.pageOf === null) {
    line.pieces[line.pieces.length - 1] = {
      ...last,
      text: last.text + added.text,
      widthPt: last.widthPt + added.widthPt,
    };
  } else line.pieces.push(added);
  line.widthPt += added.widthPt;
}

// The space at a line's end takes no room, but without it the words of two lines would be read as one.
function endLine(line: Line, space: Piece | null): void {
  const last = line.pieces.at(-1);
  if (last && space && last.pageOf === null) line.pieces[line.pieces.length - 1] = { ...last, text: `${last.text} ` };
}

/** Sets words in lines no wider than a column: as many as fit on each, and over-long words divided as a last resort. */
export function breakLines(words: readonly Word[], columnPt: number): Line[] {
  const lines: Line[] = [];
  let line: Line = { pieces: [], widthPt: 0 };
  let space: Piece | null = null;
  const finish = (): void => {
    endLine(line, space);
    lines.push(line);
    line = { pieces: [], widthPt: 0 };
    space = null;
  };
  const fits = (word: Word): boolean => line.widthPt + (space?.widthPt ?? 0) + word.widthPt <= columnPt + TOLERANCE_PT;
  for (const whole of words) {
    let word = whole;
    if (line.pieces.length > 0 && !fits(word)) finish();
    while (word.widthPt > columnPt + TOLERANCE_PT) {
      const [head, rest] = cutWord(word, columnPt);
      for (const each of head.pieces) append(line, each);
      finish();
      word = rest;
    }
    if (space) append(line, space);
    for (const each of word.pieces) append(line, each);
    space = word.space;
    if (word.endsLine) finish();
  }
  if (line.pieces.length > 0) finish();
  return lines;
}

/** Returns the widths of the longest word and of the longest line with forced breaks only. */
export function contentWidthsPt(words: readonly Word[]): { minPt: number; maxPt: number } {
  let minPt = 0;
  let maxPt = 0;
  let linePt = 0;
  for (const word of words) {
    minPt = Math.max(minPt, word.widthPt);
    linePt += word.widthPt;
    maxPt = Math.max(maxPt, linePt);
    linePt = word.endsLine ? 0 : linePt + (word.space?.widthPt ?? 0);
  }
  return { minPt, maxPt };
}
