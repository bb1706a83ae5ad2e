import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

export const installedSerialIsRemovedSerial: Rule = {
  code: 'INSTALLED_SERIAL_IS_REMOVED_SERIAL',
  severity: 'blocks',
  meaning: 'The installed item has the serial number of the removed one',
  remedy: m.installedSerialIsRemovedSerial_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, path }) => {
      if (
        change.kind !== 'replaced' ||
        !change.serial ||
        !change.by.serial ||
        !sameSerial(change.serial, change.by.serial)
      )
        return undefined;
      return {
        path: [...path, 'by', 'serial'],
        sentence: said(m.installedSerialIsRemovedSerial_itemEnteredSerialNumber, {
          by: change.by.id,
          serial: change.serial,
        }),
        data: { serial: change.serial },
      };
    }),
};
