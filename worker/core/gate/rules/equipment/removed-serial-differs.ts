import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

export const removedSerialDiffers: Rule = {
  code: 'REMOVED_SERIAL_DIFFERS',
  severity: 'blocks',
  meaning: 'The serial number of the removed item differs from the list',
  remedy: m.removedSerialDiffers_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, listed, path }) => {
      if (change.kind !== 'removed' && change.kind !== 'replaced') return undefined;
      if (!change.serial || !listed?.serial || sameSerial(change.serial, listed.serial)) return undefined;
      return {
        path: [...path, 'serial'],
        sentence: said(m.removedSerialDiffers_itemTakenOutSerial, {
          item: change.item,
          serial: change.serial,
          serial2: listed.serial,
        }),
        data: { removed: change.serial, listed: listed.serial },
      };
    }),
};
