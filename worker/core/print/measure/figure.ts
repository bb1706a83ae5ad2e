import { pointsFromMm } from '../paper.ts';
import { childElements, type Markup } from '../parse/markup.ts';
import { BLOCK_GAP_PT, BLOCK_STYLES } from '../style/block-style.ts';
import { drawingShapes, viewOf } from './drawing.ts';
import type { BlockRule, LayoutContext } from './layout-context.ts';
import { photographStrip } from './photograph.ts';
import { BREAK, type Strip, spaced, strip } from './strip.ts';
import { childTag } from './tag.ts';
import { styledText } from './text-block.ts';

const CAPTION_ROOM_PT = 60;

function drawingStrip(svg: Markup, setting: LayoutContext): Strip {
  const alt = svg.attributes['aria-label'];
  if (!alt) throw new Error('Cannot typeset <svg>: aria-label must say what it shows');
  const view = viewOf(svg);
  const widthMm = svg.attributes['data-width-mm'];
  const askedPt = widthMm === undefined ? setting.columnPt : pointsFromMm(Number(widthMm));
  // A drawing keeps its proportions; it is reduced if the column or the page requires it.
  const maxPt = ((setting.bodyPt - CAPTION_ROOM_PT) * view.width) / view.height;
  const scale = Math.min(askedPt, setting.columnPt, maxPt) / view.width;
  const tag = childTag(setting.tag, 'Figure', { alt });
  const shapes = drawingShapes(svg, view, setting);
  return strip({
    heightPt: view.height * scale,
    items: [{ kind: 'drawing', xPt: 0, yPt: 0, scale, view, tag, shapes }],
  });
}

/** `<figure>`: a drawing or a photograph with its caption, never divided. */
export const figureBlock: BlockRule = (block, setting, flow) => {
  const inside = { ...setting, tag: childTag(setting.tag, 'Div') };
  const parts = childElements(block).flatMap((part): Strip[] => {
    if (part.name === 'svg') return [drawingStrip(part, inside)];
    if (part.name === 'img') return [photographStrip(part, inside)];
    if (part.name === 'figcaption') return styledText(part, BLOCK_STYLES.figcaption, 'Caption', inside);
    return flow([part], inside);
  });
  const strips = parts.map((each, i) => (i === 0 ? each : { ...each, breakBefore: BREAK.orphan }));
  return spaced(strips, BLOCK_GAP_PT * setting.scale, BLOCK_GAP_PT * setting.scale);
};
