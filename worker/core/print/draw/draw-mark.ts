import { textWidthPt } from '../fonts/face.ts';
import type { Paper } from '../paper.ts';
import { type Canvas, FONT_NAMES } from './canvas.ts';
import { number, ratio, showOperator } from './pdf-text.ts';

const SHARE_OF_DIAGONAL = 0.72;
const MAX_SIZE_PT = 110;

/** Draws the mark across the page from corner to corner, in thin grey outline, so that the text over it stays legible in any copy. */
export function drawMark(canvas: Canvas, mark: string, paper: Paper): void {
  const { widthPt, heightPt } = paper;
  const diagonalPt = Math.hypot(widthPt, heightPt);
  const sizePt = Math.min(MAX_SIZE_PT, (SHARE_OF_DIAGONAL * diagonalPt) / textWidthPt(mark, 'semibold', 1));
  const [cos, sin] = [widthPt / diagonalPt, heightPt / diagonalPt];
  const [backPt, downPt] = [textWidthPt(mark, 'semibold', sizePt) / 2, sizePt * 0.33];
  const xPt = widthPt / 2 - backPt * cos + downPt * sin;
  const yPt = heightPt / 2 - backPt * sin - downPt * cos;
  const matrix = `${ratio(cos)} ${ratio(sin)} ${ratio(-sin)} ${ratio(cos)} ${number(xPt)} ${number(yPt)}`;
  canvas.enter(null);
  canvas.write(
    `q 0.62 G 0.6 w BT 1 Tr /${FONT_NAMES.semibold} ${number(sizePt)} Tf ${matrix} Tm ${showOperator(mark, 'semibold')} ET Q`,
  );
}
