import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { inConfiguration } from '../../in-configuration.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const maximumMassExceededEmpty: Rule = {
  code: 'MAXIMUM_MASS_EXCEEDED_EMPTY',
  severity: 'blocks',
  meaning: 'The empty aircraft is heavier than its maximum mass',
  remedy: m.maximumMassExceededEmpty_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, name, aircraft: { maximumMassKg }, empty: { massKg: emptyKg } }) => {
      if (isAtMost(emptyKg, maximumMassKg)) return undefined;
      const [massText, limitText] = figure.apart('mass', emptyKg, maximumMassKg);
      return {
        path: [...path, 'maximumMass'],
        sentence: inConfiguration(
          name,
          said(m.maximumMassExceededEmpty_emptyMassExceedsMaximum, { mass: massText, limit: limitText }),
        ),
        data: { emptyKg, maximumKg: maximumMassKg },
      };
    }),
};
