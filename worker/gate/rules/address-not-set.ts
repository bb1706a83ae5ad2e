import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const addressNotSet: Rule = {
  code: 'ADDRESS_NOT_SET',
  severity: 'blocks',
  meaning: 'A transmitter of an aircraft address has none entered',
  remedy: phrase`Enter the address and read it back off the air`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.surveillance?.devices ?? []).flatMap(({ id, addressSet }, index): Hit[] =>
      addressSet
        ? []
        : [
            {
              path: ['surveillance', 'devices', index, 'addressSet'],
              sentence: say.words`Device ${id} has no address entered`,
              data: { device: id },
            },
          ],
    ),
};
