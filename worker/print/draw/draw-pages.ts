import { DOCUMENT_TAG } from '../measure/measure-article.ts';
import type { Pages } from '../paginate/pages.ts';
import type { Paper } from '../paper.ts';
import { createCanvas } from './canvas.ts';
import type { PlacedLink } from './draw-line.ts';
import { drawMark } from './draw-mark.ts';
import { type Bookmark, drawItems, type Marks, type Place } from './draw-page.ts';
import { type RunningHeads, runningHeads } from './running-heads.ts';
import { createStructure, type Structure } from './structure.ts';

/** Everything the file is made of that stands on pages. */
export interface Drawn {
  contents: string[];
  /** By page. */
  links: PlacedLink[][];
  anchors: Map<string, Place>;
  bookmarks: Bookmark[];
  structure: Structure;
}

export type HeadsOf = (page: number, title: string) => RunningHeads;

/** Draws all pages: the mark beneath, heads and feet around, then the items as they were placed. */
export function drawPages({ pages, startPage }: Pages, paper: Paper, headsOf: HeadsOf, mark: string): Drawn {
  const structure = createStructure(DOCUMENT_TAG);
  const anchors = new Map<string, Place>();
  const bookmarks: Bookmark[] = [];
  const links: PlacedLink[][] = [];
  const contents = pages.map(({ title, items }, page) => {
    const canvas = createCanvas(structure, page);
    const marks: Marks = { links: [], anchors, bookmarks };
    const surface = { canvas, structure, marks, page, startPage };
    canvas.setArtefacts('Pagination');
    if (mark !== '') drawMark(canvas, mark, paper);
    drawItems(surface, runningHeads(headsOf(page, title), paper), paper.leftPt, paper.heightPt);
    canvas.setArtefacts('Layout');
    drawItems(surface, items, paper.leftPt, paper.heightPt - paper.topPt);
    links.push(marks.links);
    return canvas.finish();
  });
  return { contents, links, anchors, bookmarks, structure };
}
