import type { FaceName } from '../fonts/face.ts';
import type { Tag } from '../measure/tag.ts';
import { number, showOperator } from './pdf-text.ts';
import type { Element, Structure } from './structure.ts';

/** Name of each face in the resources of a page. */
export const FONT_NAMES: Readonly<Record<FaceName, string>> = { regular: 'F1', semibold: 'F2', italic: 'F3' };

/** Artefacts of the page itself, or of the layout of its content (ISO 32000-1, 14.8.2.2). */
export type ArtefactKind = 'Pagination' | 'Layout';

/** Content stream of one page, in PDF coordinates, y up. All content is marked: as an element's or as an artefact. */
export interface Canvas {
  /** Marks the content drawn next. */
  enter: (tag: Tag | null) => void;
  /** Sets the kind of artefacts drawn from here on. */
  setArtefacts: (kind: ArtefactKind) => void;
  write: (operators: string) => void;
  beginText: (xPt: number, yPt: number) => void;
  showText: (text: string, face: FaceName, sizePt: number, risePt: number) => void;
  endText: () => void;
  finish: () => string;
}

/** Creates a canvas for a page; marks are recorded in the structure. */
export function createCanvas(structure: Structure, page: number): Canvas {
  const parts: string[] = [];
  const marked: Element[] = [];
  structure.contentOf[page] = marked;
  let current: string | Tag | undefined;
  let font = '';
  let risenPt = 0;
  let artefact = '';

  const enter = (tag: Tag | null): void => {
    const next = tag ?? artefact;
    if (next === current) return;
    if (current !== undefined) parts.push('EMC');
    current = next;
    if (!tag) {
      parts.push(artefact);
      return;
    }
    const element = structure.element(tag);
    element.kids.push({ kind: 'content', page, id: marked.length });
    parts.push(`/${tag.role}<</MCID ${marked.length}>>BDC`);
    marked.push(element);
  };

  const setArtefacts = (kind: ArtefactKind): void => {
    artefact = `/Artifact<</Type/${kind}>>BDC`;
  };
  setArtefacts('Layout');

  const beginText = (xPt: number, yPt: number): void => {
    parts.push(`BT ${number(xPt)} ${number(yPt)} Td`);
  };

  // Face and rise outlast a text object (ISO 32000-1, 9.3.1), so they are written only when they change.
  const showText: Canvas['showText'] = (shown, face, sizePt, risePt) => {
    const named = `/${FONT_NAMES[face]} ${number(sizePt)} Tf`;
    if (named !== font) parts.push(named);
    if (risePt !== risenPt) parts.push(`${number(risePt)} Ts`);
    font = named;
    risenPt = risePt;
    parts.push(showOperator(shown, face));
  };

  const endText = (): void => {
    if (risenPt !== 0) parts.push('0 Ts');
    risenPt = 0;
    parts.push('ET');
  };

  const finish = (): string => {
    if (current !== undefined) parts.push('EMC');
    current = undefined;
    return parts.join('\n');
  };

  return { enter, setArtefacts, write: (operators) => parts.push(operators), beginText, showText, endText, finish };
}
