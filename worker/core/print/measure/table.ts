import * as m from '../../text/generated/messages.ts';
import type { Markup, MarkupNode } from '../parse/markup.ts';
import { BLOCK_GAP_PT, BLOCK_STYLES, RULE_PT } from '../style/block-style.ts';
import { isInline } from '../style/text-style.ts';
import { contentWidthsPt } from '../text/break-lines.ts';
import { columnWidthsPt } from './column-widths.ts';
import { horizontalRule } from './horizontal-rule.ts';
import type { BlockRule, LayoutContext } from './layout-context.ts';
import { wordsIn } from './paragraph.ts';
import { heightOf, stack } from './stack.ts';
import { BREAK, type Break, type Strip, spaced, strip, withItem } from './strip.ts';
import { type Grid, type GridCell, type GridRow, gridOf, type RowGroup } from './table-model.ts';
import { cellText, rowStrips, type TableLook, type TableSetting, tableLook } from './table-row.ts';
import { childTag, type Tag } from './tag.ts';
import { styledText } from './text-block.ts';

// A table whose lines fill less of the column than this keeps its own width: figures far apart are hard to read across.
const FULL_WIDTH_FROM = 0.62;

function contentWidths(content: readonly MarkupNode[], setting: LayoutContext): { minPt: number; maxPt: number } {
  const inline = content.filter((node) => typeof node === 'string' || isInline(node.name));
  const blocks = content.flatMap((node) =>
    typeof node === 'string' || isInline(node.name) ? [] : [contentWidths(node.children, setting)],
  );
  const own = contentWidthsPt(wordsIn(inline, setting));
  const indentPt = blocks.length > 0 ? 20 * setting.scale : 0;
  return {
    minPt: Math.max(own.minPt, ...blocks.map((block) => block.minPt)) + indentPt,
    maxPt: Math.max(own.maxPt, ...blocks.map((block) => block.maxPt)) + indentPt,
  };
}

function widthsFor(grid: Grid, look: TableLook, setting: LayoutContext): number[] {
  const cells = grid.rows.flatMap((row) =>
    row.cells.map((cell) => {
      const { minPt, maxPt } = contentWidths(cell.element.children, { ...setting, text: cellText(cell, row, look) });
      // Slightly more than the content, so that rounding never breaks the longest line.
      const padPt = 2 * look.padXPt + 0.05;
      return { column: cell.column, span: cell.span, minPt: minPt + padPt, maxPt: maxPt + padPt };
    }),
  );
  const fixed = (cell: GridCell): boolean =>
    cell.classes.has('num') || cell.classes.has('tick') || cell.classes.has('narrow');
  const body = grid.rows.filter((row) => row.group === 'tbody');
  const elastic = Array.from({ length: grid.columns }, (_, column) => {
    return body.some((row) => row.cells.some((cell) => cell.column === column && cell.span === 1 && !fixed(cell)));
  });
  const natural = columnWidthsPt(grid.columns, cells, setting.columnPt, []);
  const naturalPt = natural.reduce((total, widthPt) => total + widthPt, 0);
  if (naturalPt < FULL_WIDTH_FROM * setting.columnPt) return natural.map((widthPt) => widthPt * 1.15);
  return columnWidthsPt(
    grid.columns,
    cells,
    setting.columnPt,
    elastic.includes(true) ? elastic : elastic.map(() => true),
  );
}

// Min. two rows stay with the head, the last row stays with the one before it, and totals with their summands.
function rowBreak(rows: readonly GridRow[], index: number): Break {
  const row = rows[index];
  const before = rows[index - 1];
  if (!row || !before || before.group === 'thead') return BREAK.never;
  const heads =
    before.element.classes.has('sub') && before.cells.some((cell) => cell.element.name === 'th' && cell.span > 1);
  const sums = row.group === 'tfoot' || row.element.classes.has('total');
  const secondOfBody = rows[index - 2]?.group !== 'tbody' && before.group === 'tbody';
  return heads || sums || secondOfBody || index === rows.length - 1 ? BREAK.orphan : BREAK.free;
}

function belowRule(rows: readonly GridRow[], index: number, look: TableLook): number {
  const next = rows[index + 1];
  if (!next) return RULE_PT.heavy;
  const parted = next.group !== rows[index]?.group || next.element.classes.has('total');
  return parted ? RULE_PT.medium : look.innerRulePt;
}

function captionStrips(caption: Markup | null, isContinued: boolean, setting: LayoutContext): Strip[] {
  if (!caption) return [];
  const children = isContinued ? [...caption.children, ` ${setting.say(m.table_continued)}`] : caption.children;
  return styledText({ ...caption, children }, BLOCK_STYLES.caption, 'Caption', setting);
}

/** Use of a head: at the table, or repeated on a page on which the table continues, as an artefact. */
interface HeadPlace {
  tag: Tag | null;
  isContinued: boolean;
}

function headStrips(grid: Grid, { tag, isContinued }: HeadPlace, table: TableSetting): Strip[] {
  const { widthsPt, look, setting } = table;
  const caption = captionStrips(grid.caption, isContinued, { ...setting, tag });
  const groupTag = childTag(tag, 'THead');
  const rows = grid.rows.filter((row) => row.group === 'thead');
  const head = rows.flatMap((row, i) => {
    const belowRulePt = i === rows.length - 1 ? RULE_PT.medium : look.innerRulePt;
    return rowStrips(row, { tag: groupTag, belowRulePt, maxHeightPt: setting.bodyPt }, table);
  });
  const widthPt = widthsPt.reduce((total, each) => total + each, 0);
  const topRule = horizontalRule(0, 0, widthPt, RULE_PT.heavy);
  const [topRow, ...lowerRows] = head;
  if (!topRow) {
    return [
      ...caption,
      strip({ heightPt: 0, items: topRule, breakBefore: caption.length > 0 ? BREAK.never : BREAK.free }),
    ];
  }
  const ruled = { ...topRow, items: [...topRow.items, ...topRule] };
  return [...caption, ruled, ...lowerRows].map((each, i) => (i === 0 ? each : { ...each, breakBefore: BREAK.never }));
}

/** The caption of a table without rows: heads with nothing below them are not a table, in print or in PDF/UA. */
function captionAlone({ caption }: Grid, setting: LayoutContext): Strip[] {
  return caption ? styledText(caption, BLOCK_STYLES.caption, 'P', setting) : [];
}

/** `<table>`: one structure element over all its pages. */
export const tableBlock: BlockRule = (block, setting, flow) => {
  const grid = gridOf(block);
  if (grid.rows.every(({ group }) => group === 'thead'))
    return spaced(captionAlone(grid, setting), BLOCK_GAP_PT * setting.scale, BLOCK_GAP_PT * 1.3 * setting.scale);
  const look = tableLook(block.classes, setting.scale);
  const table: TableSetting = { widthsPt: widthsFor(grid, look, setting), look, setting, flow };
  const tag = childTag(setting.tag, 'Table');
  const head = headStrips(grid, { tag, isContinued: false }, table);
  const silent = { ...table, setting: { ...setting, report: () => {} } };
  const repeat = strip(stack(headStrips(grid, { tag: null, isContinued: true }, silent)));
  const maxHeightPt = setting.bodyPt - Math.max(heightOf(head), repeat.heightPt);
  const groupTags: Record<RowGroup, Tag | null> = {
    thead: null,
    tbody: childTag(tag, 'TBody'),
    tfoot: childTag(tag, 'TFoot'),
  };
  const body = grid.rows.flatMap((row, i): Strip[] => {
    if (row.group === 'thead') return [];
    const place = { tag: groupTags[row.group], belowRulePt: belowRule(grid.rows, i, look), maxHeightPt };
    const strips = rowStrips(row, place, table);
    return strips.map((each, n) => ({ ...each, repeat, breakBefore: n === 0 ? rowBreak(grid.rows, i) : BREAK.free }));
  });
  const named =
    block.attributes.id === undefined && tag
      ? withItem([...head, ...body], { kind: 'present', tag })
      : [...head, ...body];
  return spaced(named, BLOCK_GAP_PT * setting.scale, BLOCK_GAP_PT * 1.3 * setting.scale);
};
