import type { Check } from '../check.ts';
import { listOf, nameOf, numberOf } from '../objects.ts';
import type { StructureElement } from '../structure-tree.ts';
import { attribute } from './structure-checks.ts';

const GROUPS = ['THead', 'TBody', 'TFoot'];

/** What each part of a table may stand in, and hold. */
const NESTING: Readonly<Record<string, { parents: readonly string[]; children: RegExp }>> = {
  Table: { parents: [], children: /^(Caption )?(TR|THead|TBody|TFoot)( (TR|THead|TBody|TFoot))*( Caption)?$/ },
  THead: { parents: ['Table'], children: /^TR( TR)*$/ },
  TBody: { parents: ['Table'], children: /^TR( TR)*$/ },
  TFoot: { parents: ['Table'], children: /^TR( TR)*$/ },
  TR: { parents: ['Table', ...GROUPS], children: /^(TH|TD)( (TH|TD))*$/ },
  TH: { parents: ['TR'], children: /^/ },
  TD: { parents: ['TR'], children: /^/ },
};

function nestingDefect({ type, parent, children }: StructureElement): string | undefined {
  const rule = NESTING[type];
  if (!rule) return undefined;
  const held = children.map((child) => child.type).join(' ');
  if (rule.parents.length > 0 && !rule.parents.includes(parent?.type ?? '')) return `${type} stands in ${parent?.type}`;
  if (!rule.children.test(held)) return `${type} holds ${held}`;
  const counted = (group: string): number => children.filter((child) => child.type === group).length;
  const isWhole =
    type !== 'Table' || (counted('THead') <= 1 && counted('TFoot') <= 1 && (counted('TBody') > 0 || counted('TR') > 0));
  return isWhole ? undefined : `${type} holds ${held}`;
}

const rowsOf = (table: StructureElement): StructureElement[] =>
  table.children.flatMap((child) =>
    child.type === 'TR' ? [child] : GROUPS.includes(child.type) ? child.children : [],
  );

const widthOf = (row: StructureElement): number =>
  row.children
    .filter(({ type }) => type === 'TH' || type === 'TD')
    .reduce((cells, cell) => cells + (numberOf(attribute(cell, 'ColSpan')) ?? 1), 0);

const tables = (elements: readonly StructureElement[]): StructureElement[] =>
  elements.filter(({ type }) => type === 'Table');

export const TABLE_CHECKS: readonly Check[] = [
  {
    name: 'parts of tables',
    clause: 'UA-1 7.2',
    defects: ({ elements }) =>
      elements.flatMap((element) => {
        const defect = nestingDefect(element);
        return defect === undefined ? [] : [`${element.reference}: ${defect}`];
      }),
  },
  {
    name: 'table heads',
    clause: 'UA-1 7.5',
    defects: ({ elements }) =>
      elements
        .filter(({ type }) => type === 'TH')
        .filter(
          (cell) =>
            !['Row', 'Column', 'Both'].includes(nameOf(attribute(cell, 'Scope')) ?? '') &&
            listOf(attribute(cell, 'Headers')).length === 0,
        )
        .map(({ reference }) => `TH ${reference} has no Scope`),
  },
  {
    name: 'tables have heads',
    clause: 'UA-1 7.5',
    defects: ({ elements }) =>
      tables(elements)
        .filter((table) => !rowsOf(table).some((row) => row.children.some(({ type }) => type === 'TH')))
        .map(({ reference }) => `Table ${reference} has no TH`),
  },
  {
    name: 'table rows equally wide',
    clause: 'UA-1 7.2',
    defects: ({ elements }) =>
      tables(elements).flatMap((table) => {
        const widths = new Set(rowsOf(table).map(widthOf));
        return widths.size > 1 ? [`Table ${table.reference} has rows of ${[...widths].join(' and ')} cells`] : [];
      }),
  },
];
