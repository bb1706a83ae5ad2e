import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';
import { sameSerial } from '../serial.ts';

export const installedSerialIsRemovedSerial: Rule = {
  code: 'INSTALLED_SERIAL_IS_REMOVED_SERIAL',
  severity: 'blocks',
  meaning: 'The item put in carries the serial number of the one taken out',
  remedy: phrase`Read the serial number off the item that is fitted now`,
  source: PRACTICE,
  check: ({ results, say }) =>
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
          sentence: say.words`Item ${change.by.id} is entered with serial number ${change.serial}, which was taken out`,
          data: { serial: change.serial },
        },
      ];
    }),
};
