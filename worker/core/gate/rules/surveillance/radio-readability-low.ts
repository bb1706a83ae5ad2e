import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { instantOf } from '../../../units/calendar.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Readability with little difficulty. */
const MIN_READABILITY = 4;

export const radioReadabilityLow: Rule = {
  code: 'RADIO_READABILITY_LOW',
  severity: 'caution',
  meaning: 'A station could hardly read the radio',
  remedy: m.radioReadabilityLow_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(
      ['surveillance', 'radioChecks'],
      visit.surveillance?.radioChecks,
      ({ with: station, readability, at, item }) => {
        if (readability >= MIN_READABILITY) return undefined;
        const isBetterNow = visit.surveillance?.radioChecks?.some(
          (later) => later.item === item && later.readability >= MIN_READABILITY && instantOf(later.at) > instantOf(at),
        );
        if (isBetterNow) return undefined;
        return {
          field: 'readability',
          sentence: said(m.radioReadabilityLow_readRadio5, { station, readability }),
          data: { readability },
        };
      },
    ),
};
