import type { PictureSource } from '../measure/item.ts';
import { DOCUMENT_TAG } from '../measure/measure-article.ts';
import type { Pages } from '../paginate/page.ts';
import type { Paper } from '../paper.ts';
import { createCanvas } from './canvas.ts';
import type { PlacedLink } from './draw-line.ts';
import { drawMark } from './draw-mark.ts';
import { drawItems } from './draw-page.ts';
import { type RunningHeads, runningHeads } from './running-heads.ts';
import { createStructure, type Structure } from './structure.ts';
import type { Bookmark, Marks, Place } from './surface.ts';

/** Content of all pages for the file. */
export interface Drawn {
  contents: string[];
  /** Links by page. */
  links: PlacedLink[][];
  anchors: Map<string, Place>;
  bookmarks: Bookmark[];
  structure: Structure;
  /** Pictures by page. */
  pictures: PictureSource[][];
}

export type HeadsOf = (page: number, title: string) => RunningHeads;

/**
 * Draws all pages: the mark beneath, or over content that might cover it; heads and feet around; the items at their
 * positions, which each page releases.
 */
export function drawPages({ pages, startPage }: Pages, paper: Paper, headsOf: HeadsOf, mark: string): Drawn {
  const structure = createStructure(DOCUMENT_TAG);
  const anchors = new Map<string, Place>();
  const bookmarks: Bookmark[] = [];
  const links: PlacedLink[][] = [];
  const pictures: PictureSource[][] = [];
  const contents = pages.map((placed, page) => {
    const { title, items, isForeign } = placed;
    // A long pack is in memory once, as items or as their drawing, never as both.
    placed.items = [];
    const canvas = createCanvas(structure, page);
    const marks: Marks = { links: [], anchors, bookmarks };
    const shown: PictureSource[] = [];
    const surface = { canvas, structure, marks, page, startPage, pictures: shown };
    canvas.setArtefacts('Pagination');
    if (mark !== '' && !isForeign) drawMark(canvas, mark, paper);
    drawItems(surface, runningHeads(headsOf(page, title), paper), paper.leftPt, paper.heightPt);
    canvas.setArtefacts('Layout');
    drawItems(surface, items, paper.leftPt, paper.heightPt - paper.topPt);
    canvas.setArtefacts('Pagination');
    if (mark !== '' && isForeign) drawMark(canvas, mark, paper);
    links.push(marks.links);
    pictures.push(shown);
    return canvas.finish();
  });
  return { contents, links, anchors, bookmarks, structure, pictures };
}
