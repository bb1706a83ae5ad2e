import type { BlockRule } from './setting.ts';
import { closingPt, gapPt } from './stack.ts';
import { BREAK, held, type Strip } from './strip.ts';
import { childTag } from './tag.ts';

/** The height of strips set one below another. */
export function heightOf(strips: readonly Strip[]): number {
  let previous: Strip | null = null;
  let totalPt = 0;
  for (const next of strips) {
    totalPt += gapPt(previous, next) + next.heightPt;
    previous = next;
  }
  return totalPt + closingPt(previous);
}

/** `<section>`: with class `keep` it is not divided, unless it is longer than a page. */
export const sectionBlock: BlockRule = (block, setting, flow) => {
  const strips = flow(block.children, { ...setting, tag: childTag(setting.tag, 'Sect') });
  return block.classes.has('keep') && heightOf(strips) <= setting.bodyPt ? held(strips, BREAK.inKeptSection) : strips;
};
