import { RULE_PT } from '../style/block-style.ts';
import { isRunningText, type TextStyle, textStyle } from '../style/text-style.ts';
import { horizontalRule } from './horizontal-rule.ts';
import type { Align, Item } from './item.ts';
import type { Flow, LayoutContext } from './layout-context.ts';
import { paragraph } from './paragraph.ts';
import { type Cell, sideBySide } from './side-by-side.ts';
import { type Strip, strip, trimmed, withItem } from './strip.ts';
import type { GridCell, GridRow } from './table-model.ts';
import { childTag, type Tag } from './tag.ts';

/** Style of the rows of one table. */
export interface TableLook {
  body: TextStyle;
  head: TextStyle;
  padXPt: number;
  padYPt: number;
  innerRulePt: number;
}

/** Settings of all rows of one table: the widths of its columns, its look and its context. */
export interface TableSetting {
  widthsPt: readonly number[];
  look: TableLook;
  setting: LayoutContext;
  flow: Flow;
}

/** Position of a row in its table. */
interface RowPlace {
  /** Structure element of the group of rows. */
  tag: Tag | null;
  /** Rule at its foot. */
  belowRulePt: number;
  /** Space available on a page. */
  maxHeightPt: number;
}

/** Returns the look of a table by its classes: `compact` is smaller and closer, `plain` has no rules between rows. */
export function tableLook(classes: ReadonlySet<string>, scale: number): TableLook {
  const compact = classes.has('compact');
  return {
    body: compact ? textStyle('regular', 8, 10, scale) : textStyle('regular', 8.75, 11.5, scale),
    head: compact ? textStyle('semibold', 7.75, 9.5, scale) : textStyle('semibold', 8.25, 10.5, scale),
    padXPt: (compact ? 3 : 4) * scale,
    padYPt: (compact ? 1.25 : 2) * scale,
    innerRulePt: classes.has('plain') ? 0 : RULE_PT.hair,
  };
}

const HEAVY_ROWS = ['total', 'sub', 'out'];
const OUT_GREY = 0.92;

/** Returns the text style of a cell by its row, its class and whether it heads others. */
export function cellText(cell: GridCell, row: GridRow, look: TableLook): TextStyle {
  if (row.group === 'thead') return look.head;
  const heavy =
    cell.classes.has('out') || row.group === 'tfoot' || HEAVY_ROWS.some((name) => row.element.classes.has(name));
  const style = heavy ? { ...look.body, face: 'semibold' as const } : look.body;
  return cell.classes.has('nowrap') || cell.classes.has('num') ? { ...style, keepTogether: true } : style;
}

function alignOf(cell: GridCell, row: GridRow): Align {
  if (cell.classes.has('num')) return 'right';
  const over = row.group === 'thead' && cell.span > 1;
  return over || cell.classes.has('tick') ? 'centre' : 'left';
}

const SCOPES: Readonly<Record<string, Tag['scope']>> = { col: 'Column', colgroup: 'Column', row: 'Row' };

function cellTag(cell: GridCell, row: GridRow, rowTag: Tag | null): Tag | null {
  const columnSpan = cell.span > 1 ? { columnSpan: cell.span } : {};
  if (cell.element.name === 'td') return childTag(rowTag, 'TD', columnSpan);
  const scope = SCOPES[cell.element.attributes.scope ?? ''] ?? (row.group === 'thead' ? 'Column' : 'Row');
  return childTag(rowTag, 'TH', { ...columnSpan, scope });
}

function cellStrips(cell: GridCell, row: GridRow, setting: LayoutContext, flow: Flow): Strip[] {
  const { children, attributes } = cell.element;
  const plain = isRunningText(children);
  const content = plain ? paragraph(children, alignOf(cell, row), setting) : trimmed(flow(children, setting));
  const id = attributes.id;
  const named = id === undefined ? content : withItem(content, { kind: 'anchor', id });
  // A cell belongs to its row even if it is empty.
  return setting.tag && !plain ? withItem(named, { kind: 'present', tag: setting.tag }) : named;
}

/** Returns a row as one strip, or as several if it is higher than the space on a page. */
export function rowStrips(
  row: GridRow,
  { tag, belowRulePt, maxHeightPt }: RowPlace,
  { widthsPt, look, setting, flow }: TableSetting,
): Strip[] {
  const rowTag = childTag(tag, 'TR');
  const edgesPt = [0];
  for (const widthPt of widthsPt) edgesPt.push((edgesPt.at(-1) ?? 0) + widthPt);
  const cells = row.cells.map((cell): Cell => {
    const leftPt = (edgesPt[cell.column] ?? 0) + look.padXPt;
    const rightPt = (edgesPt[cell.column + cell.span] ?? 0) - look.padXPt;
    const inside = {
      ...setting,
      columnPt: Math.max(rightPt - leftPt, 1),
      text: cellText(cell, row, look),
      tag: cellTag(cell, row, rowTag),
    };
    return { xPt: leftPt, strips: cellStrips(cell, row, inside, flow) };
  });
  const slices = sideBySide(cells, maxHeightPt - 2 * look.padYPt, row.group === 'thead' ? 'bottom' : 'top');
  const widthPt = edgesPt.at(-1) ?? 0;
  const strips = slices.map((slice, i) => {
    const heightPt = slice.heightPt + 2 * look.padYPt;
    const items: Item[] = [{ kind: 'group', xPt: 0, yPt: look.padYPt, items: slice.items }];
    if (row.element.classes.has('out'))
      items.unshift({ kind: 'fill', xPt: 0, yPt: 0, widthPt, heightPt, grey: OUT_GREY });
    if (i === slices.length - 1) items.push(...horizontalRule(0, heightPt, widthPt, belowRulePt));
    return strip({ heightPt, items });
  });
  const id = row.element.attributes.id;
  return id === undefined ? strips : withItem(strips, { kind: 'anchor', id });
}
