import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const notReadBack: Rule = {
  code: 'NOT_READ_BACK',
  severity: 'caution',
  meaning: 'Nobody received a device off the air',
  remedy: phrase`Receive it and enter address and flight identity as received`,
  source: read('EASA SIB 2011-20 as summarised'),
  check: ({ visit, say }) =>
    (visit.surveillance?.devices ?? []).flatMap(({ id, kind, readBack }, index): Hit[] =>
      readBack || kind === 'locator'
        ? []
        : [
            {
              path: ['surveillance', 'devices', index, 'readBack'],
              sentence: say.words`Device ${id} was not received off the air`,
              data: { device: id },
            },
          ],
    ),
};
