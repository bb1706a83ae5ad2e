import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

/** No aircraft flies at half its empty mass. */
const LOWEST_SHARE = 0.5;

export const envelopeCornerUnlikely: Rule = {
  code: 'ENVELOPE_CORNER_UNLIKELY',
  severity: 'caution',
  meaning: 'A corner of the envelope is above the maximum mass, or below half the empty mass',
  remedy: m.envelopeCornerUnlikely_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft, empty }) => {
      const { maximumMassKg, maximumMassWithExternalLoadKg = 0 } = aircraft;
      const highestKg = Math.max(maximumMassKg, maximumMassWithExternalLoadKg);
      const lowestKg = LOWEST_SHARE * empty.massKg;
      return hits(aircraft.envelope, ({ massKg }, index) => {
        if (isAtMost(massKg, highestKg) && isAtLeast(massKg, lowestKg)) return undefined;
        const isHigh = massKg > highestKg;
        const [corner, limit] = figure.apart('mass', massKg, isHigh ? highestKg : empty.massKg);
        const values = { number: index + 1, corner, limit };
        return {
          path: [...path, 'envelope', index, 'mass'],
          sentence: inConfiguration(
            name,
            isHigh ? said(m.envelopeCornerUnlikely_above, values) : said(m.envelopeCornerUnlikely_below, values),
          ),
          data: { massKg, maximumKg: highestKg, emptyKg: empty.massKg },
        };
      });
    }),
};
