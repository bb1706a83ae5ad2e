import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { type Hit, type Rule, type RuleInput, read } from '../../rule.ts';
import { isNumbered } from '../../same-number.ts';

export const serialUnread: Rule = {
  code: 'SERIAL_UNREAD',
  severity: 'caution',
  meaning: 'A fitted or removed item has no serial number, but the former item or the list has one',
  remedy: m.serialUnread_remedy,
  source: read('ML.A.501(a) and (c) (a part is fitted with its own paper)'),
  check: (input) => [...fitted(input), ...removed(input)],
};

/** An item for one that had a serial number has one too. */
function fitted({ results }: RuleInput): Hit[] {
  return hits(results.change.changes, ({ change, listed, path }) => {
    if (change.kind !== 'replaced' || change.by.serial !== undefined) return undefined;
    const former = change.serial ?? listed?.serial;
    if (!isNumbered(former)) return undefined;
    const { id, name } = change.by;
    return {
      path: [...path, 'by', 'serial'],
      sentence: said(m.serialUnread_fitted, { item: id, name, serial: former }),
      data: { item: id },
    };
  });
}

function removed({ results }: RuleInput): Hit[] {
  return hits(results.change.changes, ({ change, listed, path }) => {
    if ((change.kind !== 'removed' && change.kind !== 'replaced') || change.serial !== undefined) return undefined;
    if (!listed || !isNumbered(listed.serial)) return undefined;
    return {
      path: [...path, 'serial'],
      sentence: said(m.serialUnread_removed, { item: listed.id, name: listed.name, serial: listed.serial }),
      data: { item: listed.id },
    };
  });
}
