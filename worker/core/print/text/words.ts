import { textWidthPt } from '../fonts/face.ts';
import type { Piece } from '../measure/item.ts';
import type { Run } from './inline-runs.ts';

/** An indivisible unit of a line, with the space that follows it. */
export interface Word {
  pieces: Piece[];
  widthPt: number;
  /** Space after the word; `null` if the next word follows without one, as after a hyphen. */
  space: Piece | null;
  endsLine: boolean;
}

// A line may break after a hyphen, dash or slash between words. Dates, ranges and part numbers stay whole if they fit a
// line.
const BREAK_WITHIN = /(?<=\p{L}{2}[-\u2010\u2013\u2014/])(?=\p{L}{2})/u;

function piece(run: Run, text: string): Piece {
  const { style, tag, link, pageOf } = run;
  return { text, style, tag, link, pageOf, widthPt: textWidthPt(text, style.face, style.sizePt) };
}

// Spaces are separate parts; other parts may be separated from their neighbours.
function partsOf(run: Run): string[] {
  if (run.text === '\n' || run.pageOf !== null) return [run.text];
  if (run.style.keepTogether) return run.text === '' ? [] : [run.text];
  return run.text
    .split(/( )/)
    .flatMap((part) =>
      part === '' ? [] : part.includes('-') || /[\u2010-\u2014/]/.test(part) ? part.split(BREAK_WITHIN) : [part],
    );
}

/** Divides runs into words. Space at the ends of lines is dropped, as in HTML. */
export function wordsOf(runs: readonly Run[]): Word[] {
  const words: Word[] = [];
  let open: Word | null = null;
  const start = (): Word => {
    const word: Word = { pieces: [], widthPt: 0, space: null, endsLine: false };
    words.push(word);
    return word;
  };
  for (const run of runs) {
    const parts = partsOf(run);
    parts.forEach((part, i) => {
      if (part === '\n') {
        const before: Word | undefined = open ?? words.at(-1);
        const ended = before && !before.endsLine ? before : start();
        ended.endsLine = true;
        ended.space = null;
        open = null;
      } else if (part === ' ') {
        const last: Word | undefined = open ?? words.at(-1);
        if (last && !last.endsLine && last.space === null) last.space = piece(run, ' ');
        open = null;
      } else {
        const before: string | undefined = parts[i - 1];
        if (open === null || (before !== undefined && before !== ' ')) open = start();
        const added = piece(run, part);
        open.pieces.push(added);
        open.widthPt += added.widthPt;
      }
    });
  }
  const last = words.at(-1);
  if (last) last.space = null;
  return words;
}
