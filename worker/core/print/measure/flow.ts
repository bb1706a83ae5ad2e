import type { Markup, MarkupNode } from '../parse/markup.ts';
import { isInline } from '../style/text-style.ts';
import { asideBlock } from './aside.ts';
import { columnsBlock } from './columns.ts';
import { cutOutBlock } from './cut-out.ts';
import { factsBlock } from './facts.ts';
import { figureBlock } from './figure.ts';
import type { BlockRule, Flow } from './layout-context.ts';
import { listBlock } from './list.ts';
import { paragraph } from './paragraph.ts';
import { sectionBlock } from './section.ts';
import { signatureBlock } from './signature.ts';
import { BREAK, type Strip, withItem } from './strip.ts';
import { tableBlock } from './table.ts';
import { headingBlock, paragraphBlock } from './text-block.ts';

const divisionBlock: BlockRule = (block, setting, flow) => {
  if (block.classes.has('columns')) return columnsBlock(block, setting, flow);
  if (block.classes.has('signature')) return signatureBlock(block, setting, flow);
  if (block.classes.has('cut')) return cutOutBlock(block, setting, flow);
  return flow(block.children, setting);
};

const RULES: Readonly<Record<string, BlockRule>> = {
  header: (block, setting, flow) => flow(block.children, setting),
  section: sectionBlock,
  h1: headingBlock,
  h2: headingBlock,
  h3: headingBlock,
  p: paragraphBlock,
  ul: listBlock,
  ol: listBlock,
  dl: factsBlock,
  div: divisionBlock,
  aside: asideBlock,
  figure: figureBlock,
  table: tableBlock,
};

function isText(node: MarkupNode): boolean {
  return typeof node === 'string' || isInline(node.name);
}

function isBlank(node: MarkupNode): boolean {
  return typeof node === 'string' && !/[^ \t\r\n\f]/.test(node);
}

const HEADINGS = new Set(['h1', 'h2', 'h3']);
const INTRODUCED = new Set(['table', 'figure', 'ul', 'ol', 'dl']);

// Content after a heading stays on its page; so does content introduced by a single paragraph between them.
function join(column: Strip[], block: Markup, strips: readonly Strip[], isKept: boolean): void {
  const id = block.attributes.id;
  const named = id === undefined ? strips : withItem(strips, { kind: 'anchor', id });
  named.forEach((each, i) => {
    const kept = i === 0 && isKept && each.breakBefore < BREAK.orphan;
    column.push(kept ? { ...each, breakBefore: BREAK.orphan } : each);
  });
}

/** Measures blocks one below another; text between them is set as paragraphs of the enclosing element. */
export const flow: Flow = (content, setting) => {
  const column: Strip[] = [];
  let text: MarkupNode[] = [];
  let afterHeading = false;
  let afterIntroduction = false;
  const endText = (): void => {
    if (!text.every(isBlank)) column.push(...paragraph(text, 'left', setting));
    text = [];
  };
  for (const node of content) {
    if (typeof node === 'string' || isText(node)) {
      text.push(node);
      continue;
    }
    endText();
    const rule = RULES[node.name];
    if (!rule) throw new Error(`Cannot typeset article: <${node.name}> must not stand here`);
    const isKept = afterHeading || (afterIntroduction && INTRODUCED.has(node.name));
    join(column, node, rule(node, setting, flow), isKept);
    afterIntroduction = afterHeading && node.name === 'p';
    afterHeading = HEADINGS.has(node.name);
  }
  endText();
  return column;
};
