import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';
import { sameSerial } from '../../serial.ts';

export const installedSerialIsRemovedSerial: Rule = {
  code: 'INSTALLED_SERIAL_IS_REMOVED_SERIAL',
  severity: 'blocks',
  meaning: 'The item put in carries the serial number of the one taken out',
  remedy: m.installedSerialIsRemovedSerial_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    results.change.changes.flatMap(({ change, path }): Hit[] => {
      if (
        change.kind !== 'replaced' ||
        !change.serial ||
        !change.by.serial ||
        !sameSerial(change.serial, change.by.serial)
      )
        return [];
      return [
        {
          path: [...path, 'by', 'serial'],
          sentence: said(m.installedSerialIsRemovedSerial_itemEnteredSerialNumber, {
            by: change.by.id,
            serial: change.serial,
          }),
          data: { serial: change.serial },
        },
      ];
    }),
};
