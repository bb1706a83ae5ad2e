import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';
import { sameSerial } from '../serial.ts';

export const removedSerialDiffers: Rule = {
  code: 'REMOVED_SERIAL_DIFFERS',
  severity: 'blocks',
  meaning: 'The serial number taken out is not the one on the list',
  remedy: phrase`Read it again; correct the line, or enter it as found with a different serial`,
  source: PRACTICE,
  check: ({ results, say }) =>
    results.change.changes.flatMap(({ change, listed, path }): Hit[] => {
      if (change.kind !== 'removed' && change.kind !== 'replaced') return [];
      if (!change.serial || !listed?.serial || sameSerial(change.serial, listed.serial)) return [];
      return [
        {
          path: [...path, 'serial'],
          sentence: say.words`Item ${change.item} taken out has serial number ${change.serial}; the list has ${listed.serial}`,
          data: { removed: change.serial, listed: listed.serial },
        },
      ];
    }),
};
