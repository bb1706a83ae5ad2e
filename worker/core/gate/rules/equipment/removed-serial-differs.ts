import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

export const removedSerialDiffers: Rule = {
  code: 'REMOVED_SERIAL_DIFFERS',
  severity: 'blocks',
  meaning: 'The serial number taken out is not the one on the list',
  remedy: m.removedSerialDiffers_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    results.change.changes.flatMap(({ change, listed, path }): Hit[] => {
      if (change.kind !== 'removed' && change.kind !== 'replaced') return [];
      if (!change.serial || !listed?.serial || sameSerial(change.serial, listed.serial)) return [];
      return [
        {
          path: [...path, 'serial'],
          sentence: said(m.removedSerialDiffers_itemTakenOutSerial, {
            item: change.item,
            serial: change.serial,
            serial2: listed.serial,
          }),
          data: { removed: change.serial, listed: listed.serial },
        },
      ];
    }),
};
