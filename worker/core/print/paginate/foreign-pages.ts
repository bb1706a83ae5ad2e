import type { Say } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { Annex, PageForm } from '../import/index.ts';
import { outline } from '../measure/aside.ts';
import type { Item } from '../measure/item.ts';
import { childTag, type Tag } from '../measure/tag.ts';
import { type Paper, pointsFromMm } from '../paper.ts';
import type { PrintDocument } from '../print-job.ts';
import { RULE_PT } from '../style/block-style.ts';
import type { Page } from './page.ts';

// Between the rules of our head and foot, up to the printable width of printers.
const TOP_PT = 50;
const BOTTOM_PT = 51;
const SIDE_PT = pointsFromMm(10);

// Reduces a page if required, never enlarges it, and centres it.
function placed(annex: Annex, page: PageForm, tag: Tag | null, paper: Paper): Item {
  const [acrossPt, upPt] = [paper.widthPt - 2 * SIDE_PT, paper.heightPt - TOP_PT - BOTTOM_PT];
  const scale = Math.min(1, acrossPt / page.widthPt, upPt / page.heightPt);
  const [widthPt, heightPt] = [page.widthPt * scale, page.heightPt * scale];
  const xPt = (paper.widthPt - widthPt) / 2 - paper.leftPt;
  const yPt = TOP_PT + (upPt - heightPt) / 2 - paper.topPt;
  const source = { kind: 'form', annex, page } as const;
  return {
    kind: 'group',
    ...{ xPt, yPt },
    items: [
      { kind: 'picture', xPt: 0, yPt: 0, widthPt, heightPt, source, matrix: [scale, 0, 0, scale, 0, 0], tag },
      // Its edge is drawn, so that nobody mistakes it for a page of ours.
      ...outline(widthPt, heightPt, RULE_PT.hair),
    ],
  };
}

/** Context of the pages: their article, the sheet, and the translator of their names. */
interface Placement {
  article: Tag;
  paper: Paper;
  say: Say;
}

/** Returns the pages of a PDF on pages of ours: each one figure, the first with a bookmark. */
export function foreignPages(
  annex: Annex,
  { title, appended }: PrintDocument,
  { article, paper, say }: Placement,
): Page[] {
  const section = childTag(article, 'Sect');
  return annex.pages.map((page, i) => {
    const alt = say(m.foreignPages_page, { appended: appended?.title ?? title, i: i + 1, count: annex.pages.length });
    const bookmark: Item[] = i === 0 ? [{ kind: 'bookmark', level: 2, title: alt }] : [];
    return {
      title,
      items: [...bookmark, placed(annex, page, childTag(section, 'Figure', { alt }), paper)],
      isForeign: true,
    };
  });
}
