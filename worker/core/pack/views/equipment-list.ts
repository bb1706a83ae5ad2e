import type { EquipmentItem } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { changeRows, unitHeads } from './change-rows.ts';
import { common, sources } from './common.ts';

export function equipmentListView(context: PackContext): View {
  const { results, fmt, visit } = context;
  const { lines, after } = results.change;
  const sum = after.reduce((mass, { massKg }) => mass + massKg, 0);
  const incoming = new Set(lines.filter(({ kind }) => kind !== 'removed').map(({ item }) => item));
  return {
    ...common(context),
    ...accepted(context, '/modifications', '/asFound', '/parts'),
    ...unitHeads(context),
    baseline: visit.baseline
      ? `${visit.baseline.reference}${visit.baseline.equipmentRevision ? fmt.text(m.equipmentList_listRevision, { equipmentRevision: visit.baseline.equipmentRevision }) : ''}`
      : fmt.text(m.equipmentList_noneGiven),
    changeCaption: fmt.text(m.equipmentList_everyLineChangeRecord),
    hasChanges: lines.length > 0,
    ...changeRows(context, lines),
    count: String(after.length),
    items: after.map((item) => itemRow(context, item, incoming.has(item.id))),
    sum: fmt.number('mass', sum, { extra: 1 }),
    ...sources(fmt.text(m.equipmentList_signedLinesOutNegative), fmt.text(m.equipmentList_listNamesRemovableRequired)),
  };
}

function itemRow({ fmt }: PackContext, item: EquipmentItem, isChanged: boolean): Record<string, string> {
  const product = [item.maker, item.partNumber, item.version].filter(Boolean).join(' ');
  return {
    id: item.id,
    change: isChanged ? '●' : '',
    name: item.onLoan ? loanText(fmt, item.name, item.onLoan) : item.name,
    product: product || DASH,
    serial: item.serial ?? DASH,
    location: item.location ?? DASH,
    required: item.required === undefined ? DASH : item.required ? 'R' : 'O',
    mass: fmt.number('mass', item.massKg, { extra: 1 }),
    arm: fmt.number('arm', item.armMm),
  };
}

/** Returns the name of an item that goes back, with its lender. */
function loanText(
  fmt: PackContext['fmt'],
  name: string,
  { from, until }: NonNullable<EquipmentItem['onLoan']>,
): string {
  return until === undefined
    ? fmt.text(m.equipmentList_onLoan, { name, from })
    : fmt.text(m.equipmentList_onLoanUntil, { name, from, until: fmt.date(until) });
}
