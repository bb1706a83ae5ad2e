import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const kindUnstated: Rule = {
  code: 'KIND_UNSTATED',
  severity: 'blocks',
  meaning: 'An item was changed whose kind of equipment is not stated, so its tests are unknown',
  remedy: m.kindUnstated_remedy,
  source: PRACTICE,
  check: ({ events }) => {
    const changed = new Map(
      events.flatMap((event) => (event.item ? [[event.item.id, { event, item: event.item }] as const] : [])),
    );
    return hits([...changed.values()], ({ event: { path }, item: { name, equipmentKind, traits = [] } }) => {
      if (equipmentKind === undefined)
        return { path: [...path, 'equipmentKind'], sentence: said(m.kindUnstated_noKind, { item: name }) };
      return equipmentKind === 'other' && traits.length === 0
        ? { path: [...path, 'traits'], sentence: said(m.kindUnstated_otherWithoutTraits, { item: name }) }
        : undefined;
    });
  },
};
