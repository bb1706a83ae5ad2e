import type { MarkupNode } from '../parse/markup.ts';
import { breakLines, type Line } from '../text/break-lines.ts';
import { inlineRuns } from '../text/inline-runs.ts';
import { type Word, wordsOf } from '../text/words.ts';
import type { Align, Item } from './item.ts';
import type { LayoutContext } from './layout-context.ts';
import { BREAK, type Break, type Strip, strip } from './strip.ts';

// Capitals of the face are 0.66 em high; half of that below the middle of the line centres them in it.
const BASELINE_EM = 0.33;

/** Returns the distance from the top of a line to its baseline, so that capitals and figures are centred in it. */
export function baselinePt(leadingPt: number, sizePt: number): number {
  return leadingPt / 2 + sizePt * BASELINE_EM;
}

// Min. two lines of a paragraph stay together on either side of a page break.
function lineBreak(index: number, lines: number): Break {
  return index === 1 || index === lines - 1 ? BREAK.orphan : BREAK.free;
}

function lineStrips(lines: readonly Line[], align: Align, setting: LayoutContext): Strip[] {
  const { sizePt, leadingPt } = setting.text;
  return lines.map((line, i) => {
    const item: Item = {
      kind: 'line',
      xPt: 0,
      baselinePt: baselinePt(leadingPt, sizePt),
      widthPt: setting.columnPt,
      align,
      pieces: line.pieces,
    };
    return strip({
      heightPt: leadingPt,
      items: [item],
      breakBefore: i === 0 ? BREAK.free : lineBreak(i, lines.length),
    });
  });
}

/** Sets inline content in lines, one strip per line. Empty content is one empty line, so that a row or an entry keeps its height. */
export function paragraph(content: readonly MarkupNode[], align: Align, setting: LayoutContext): Strip[] {
  const { runs, ids } = inlineRuns(content, setting);
  const lines = breakLines(wordsOf(runs), setting.columnPt);
  const strips = lineStrips(lines.length > 0 ? lines : [{ pieces: [], widthPt: 0 }], align, setting);
  const [first] = strips;
  if (first) {
    const named: Item[] = ids.map((id) => ({ kind: 'anchor', id }));
    const present: Item[] = setting.tag ? [{ kind: 'present', tag: setting.tag }] : [];
    first.items = [...named, ...present, ...first.items];
  }
  return strips;
}

/** Returns the words of inline content, for its possible width. Reports nothing. */
export function wordsIn(content: readonly MarkupNode[], setting: LayoutContext): Word[] {
  return wordsOf(inlineRuns(content, { ...setting, report: () => {} }).runs);
}
