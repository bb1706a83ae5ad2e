import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const nonLiftingMassExceeded: Rule = {
  code: 'NON_LIFTING_MASS_EXCEEDED',
  severity: 'blocks',
  meaning: 'The empty aircraft without its lifting parts is already heavier than the non-lifting parts may be',
  remedy: m.nonLiftingMassExceeded_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, aircraft: { nonLifting }, empty }) => {
      if (!nonLifting) return undefined;
      const massKg = empty.massKg - nonLifting.liftingPartsMassKg;
      if (isAtMost(massKg, nonLifting.maximumMassKg)) return undefined;
      const [mass, limit] = figure.apart('mass', massKg, nonLifting.maximumMassKg);
      return {
        path: [...path, 'nonLifting'],
        sentence: said(m.nonLiftingMassExceeded_already, { mass, limit }),
        data: { massKg, limitKg: nonLifting.maximumMassKg },
      };
    }),
};
