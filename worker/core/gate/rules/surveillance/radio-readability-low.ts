import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

/** Readable with little difficulty. */
const MIN_READABILITY = 4;

export const radioReadabilityLow: Rule = {
  code: 'RADIO_READABILITY_LOW',
  severity: 'caution',
  meaning: 'A station could hardly read the radio',
  remedy: m.radioReadabilityLow_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.surveillance?.radioChecks ?? []).flatMap(({ with: station, readability }, index): Hit[] =>
      readability >= MIN_READABILITY
        ? []
        : [
            {
              path: ['surveillance', 'radioChecks', index, 'readability'],
              sentence: said(m.radioReadabilityLow_readRadio5, { station, readability }),
              data: { readability },
            },
          ],
    ),
};
