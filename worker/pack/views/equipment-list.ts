import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { EquipmentItem } from '../../visit/visit.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { changeRows, unitHeads } from './change-rows.ts';
import { common, sources } from './common.ts';

export function equipmentListView(context: PackContext): View {
  const { results, say, visit } = context;
  const { lines, after } = results.change;
  const sum = after.reduce((mass, { massKg }) => mass + massKg, 0);
  const incoming = new Set(lines.filter(({ kind }) => kind !== 'removed').map(({ item }) => item));
  return {
    ...common(context),
    ...unitHeads(context),
    baseline: visit.baseline
      ? `${visit.baseline.reference}${visit.baseline.equipmentRevision ? say.text(m.equipmentList_listRevision, { equipmentRevision: visit.baseline.equipmentRevision }) : ''}`
      : say.text(m.equipmentList_noneGiven),
    changeCaption: say.text(m.equipmentList_everyLineChangeRecord),
    hasChanges: lines.length > 0,
    ...changeRows(context, lines),
    count: String(after.length),
    items: after.map((item) => itemRow(context, item, incoming.has(item.id))),
    sum: say.number('mass', sum, { extra: 1 }),
    ...sources(say.text(m.equipmentList_signedLinesOutNegative), say.text(m.equipmentList_listNamesRemovableRequired)),
  };
}

function itemRow({ say }: PackContext, item: EquipmentItem, isChanged: boolean): Record<string, string> {
  const product = [item.maker, item.partNumber, item.version].filter(Boolean).join(' ');
  return {
    id: item.id,
    change: isChanged ? '●' : '',
    name: item.name,
    product: product || DASH,
    serial: item.serial ?? DASH,
    location: item.location ?? DASH,
    required: item.required === undefined ? DASH : item.required ? 'R' : 'O',
    mass: say.number('mass', item.massKg, { extra: 1 }),
    arm: say.number('arm', item.armMm),
  };
}
