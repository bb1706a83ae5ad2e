import { isAtLeast, isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

/** A corner below this share of the empty mass is never flown. */
const EMPTY_SHARE = 0.5;

export const envelopeCornerUnusual: Rule = {
  code: 'ENVELOPE_CORNER_UNUSUAL',
  severity: 'caution',
  meaning: 'A corner of the envelope is far below the empty mass, or above the maximum mass',
  remedy: m.envelopeCornerUnusual_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft, empty }) => {
      const lowestKg = EMPTY_SHARE * empty.massKg;
      return hitsIn([], aircraft.envelope, ({ massKg }) => {
        if (isAtLeast(massKg, lowestKg) && isAtMost(massKg, aircraft.maximumMassKg)) return undefined;
        return {
          field: 'mass',
          sentence: inConfiguration(
            name,
            said(m.envelopeCornerUnusual_corner, {
              mass: figure.measure('mass', massKg),
              lowest: figure.measure('mass', lowestKg),
              maximum: figure.measure('mass', aircraft.maximumMassKg),
            }),
          ),
          data: { massKg, lowestKg, maximumKg: aircraft.maximumMassKg },
        };
      }).map(({ path: corner, ...hit }) => ({ ...hit, path: [...path, 'envelope', ...corner] }));
    }),
};
