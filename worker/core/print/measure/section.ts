import type { BlockRule } from './layout-context.ts';
import { heightOf } from './stack.ts';
import { BREAK, held } from './strip.ts';
import { childTag } from './tag.ts';

/** `<section>`: with class `keep` not divided, unless longer than a page. */
export const sectionBlock: BlockRule = (block, setting, flow) => {
  const strips = flow(block.children, { ...setting, tag: childTag(setting.tag, 'Sect') });
  return block.classes.has('keep') && heightOf(strips) <= setting.bodyPt ? held(strips, BREAK.inKeptSection) : strips;
};
